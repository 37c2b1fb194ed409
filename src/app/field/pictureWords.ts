/** The picture in words, one sentence a line, for those who hear the page instead of seeing it. */
import { showStep } from "../parts/showStep"
import type { Picture, PictureLine } from "./pictureOf"

const lineWords = (line: PictureLine): string => {
  const steps = line.steps.map((step) => showStep(step).toLowerCase())
  return `${[line.name, ...line.values, ...steps].join(", ")}: ${line.state.words}.`
}

/** Supply first, then the earthing conductor, then the bonds in the order they were named. */
export const pictureWords = (picture: Picture): string[] => [
  `${["Supply", picture.arrangement ?? "earthing not said yet", ...picture.supply].join(", ")}.`,
  lineWords(picture.conductor),
  ...picture.bonds.map(lineWords),
]
