/** What the British pack says of itself. Apart from its rules, since the start page names the edition before they are here. */
import type { Pack } from "../../Pack"

export const ukBs7671About: Pick<Pack, "id" | "title" | "edition" | "newer" | "thin"> = {
  id: "uk-bs7671",
  title: "United Kingdom, BS 7671",
  edition: "BS 7671:2018+A2:2022",
  newer:
    "Amendment 4 was published on 15 April 2026 and the edition before it was withdrawn on 15 October 2026. No figure " +
    "here was checked against it: look in the edition in force, and ask the network operator.",
  thin: false,
}
