/** One out of a few, as buttons side by side. Radio buttons underneath, so that arrow keys and readers know it. */

interface ChoiceProps<Value extends string | number> {
  name: string
  legend: string
  options: readonly (readonly [value: Value, words: string])[]
  chosen: Value
  choose: (value: Value) => void
}

export const Choice = <Value extends string | number>(props: ChoiceProps<Value>) => {
  const { name, legend, options, chosen, choose } = props
  return (
    <fieldset className="choice">
      <legend>{legend}</legend>
      <div className="choice-row">
        {options.map(([value, words]) => (
          <label key={value} className={value === chosen ? "choice-way choice-chosen" : "choice-way"}>
            <input
              type="radio"
              className="unseen"
              name={name}
              checked={value === chosen}
              onChange={() => choose(value)}
            />
            <span>{words}</span>
          </label>
        ))}
      </div>
    </fieldset>
  )
}
