/** Fetches the fallback voice from the page's own address. A server that answers with its start page is seen through. */
import { done, type Outcome, refuse } from "../facts/Outcome"
import { openVoicePack, type VoiceClips, VoicePack } from "./VoicePack"

const notThere = "The built-in voice could not be loaded."

/** `folder` is an address that ends with a stroke, such as `voice/` beside the page. */
export const loadVoicePack = async (
  folder: string,
  fetchFile: (address: string) => Promise<Response> = (address) => fetch(address),
): Promise<Outcome<VoiceClips>> => {
  try {
    const note = await fetchFile(`${folder}voice.json`)
    const pack = VoicePack.safeParse(note.ok ? await note.json() : null)
    if (!pack.success) return refuse(notThere)
    const clips = await fetchFile(`${folder}${pack.data.file}`)
    // An answer that is not the clips has another length, which opening it notices.
    return done(openVoicePack(pack.data, new Uint8Array(await clips.arrayBuffer())))
  } catch {
    return refuse(notThere)
  }
}
