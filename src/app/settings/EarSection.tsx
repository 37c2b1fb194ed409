/** Which ear listens, with where the sound goes beside each. Ears that this browser does not have are shown and say why. */
import { useState } from "react"
import { fetchOnDevice } from "../../speech/browserEar"
import type { EarId } from "../../speech/EarId"
import { type EarChoice, earChoices } from "../../speech/earChoices"
import { failedEar } from "../failedEar"
import type { Settings } from "./Settings"
import type { SettingsKeeper } from "./SettingsKeeper"

interface OneProps {
  ear: EarChoice
  isChosen: boolean
  choose: () => void
}

const One = ({ ear, isChosen, choose }: OneProps) => (
  <label className="check-row">
    <input type="radio" name="ear" checked={isChosen} disabled={!ear.isThere} onChange={choose} />
    <span>
      {ear.name}
      <span className="check-more">
        {ear.about} {!ear.isThere && ear.missing}
      </span>
    </span>
  </label>
)

const fetching = "Looking for the language pack on this device."

export const EarSection = ({ settings, keeper }: { settings: Settings; keeper: SettingsKeeper }) => {
  const [told, setTold] = useState("")
  const [failed, setFailed] = useState(failedEar.read)
  const choices = earChoices()
  const chosen = choices.find((one) => one.id === settings.ear && one.isThere)?.id ?? "offline"
  const forget = () => {
    failedEar.forget()
    setFailed(null)
  }
  const choose = async (ear: EarId) => {
    forget()
    keeper.change({ ear })
    if (ear !== "device") return setTold("")
    setTold(fetching)
    setTold((await fetchOnDevice()) ? "The language pack is here." : "It cannot be had. The offline ear listens.")
  }
  return (
    <fieldset className="choice">
      <legend>Which ear listens</legend>
      {choices.map((ear) => (
        <One key={ear.id} ear={ear} isChosen={ear.id === chosen} choose={() => void choose(ear.id)} />
      ))}
      <p className="quiet">
        A change counts from the next time listening starts. Whatever fails, the offline ear takes over and says so. The
        browser’s recogniser gives no sound to keep.
      </p>
      <p role="status">{told}</p>
      {failed && chosen !== "offline" && (
        <>
          <p>It failed here: {failed} The offline ear listens instead.</p>
          <button type="button" onClick={forget}>
            Try it again
          </button>
        </>
      )}
    </fieldset>
  )
}
