/** Something that is on or off, with what it means. */
import type { ReactNode } from "react"

interface SwitchProps {
  words: string
  children?: ReactNode
  on: boolean
  set: (on: boolean) => void
}

export const Switch = ({ words, children, on, set }: SwitchProps) => (
  <label className="check-row">
    <input type="checkbox" checked={on} onChange={(event) => set(event.target.checked)} />
    <span>
      {words}
      {children && <span className="check-more">{children}</span>}
    </span>
  </label>
)
