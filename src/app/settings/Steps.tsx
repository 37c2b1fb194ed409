/** A step up or down, with how far it stands: the same steps that "louder" and "slower" take by voice. */
import { mostSteps } from "../../dialogue/Preferences"

interface StepsProps {
  legend: string
  less: string
  more: string
  step: number
  set: (step: number) => void
}

export const Steps = ({ legend, less, more, step, set }: StepsProps) => {
  const of = 2 * mostSteps + 1
  const at = step + mostSteps + 1
  return (
    <fieldset className="choice">
      <legend>{legend}</legend>
      <div className="steps-row">
        <button type="button" disabled={step <= -mostSteps} onClick={() => set(step - 1)}>
          {less}
        </button>
        <meter min={0} max={of} value={at} aria-label={`${legend}, step ${at} of ${of}`} />
        <button type="button" disabled={step >= mostSteps} onClick={() => set(step + 1)}>
          {more}
        </button>
      </div>
    </fieldset>
  )
}
