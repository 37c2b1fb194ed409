/** Something that is fetched once, on the first draw: null while it is on its way. */
import { useEffect, useRef, useState } from "react"

export const useOpened = <T>(open: () => Promise<T>): T | "failed" | null => {
  const [opened, setOpened] = useState<T | "failed" | null>(null)
  const opening = useRef<Promise<T>>(undefined)
  const first = useRef(open)
  useEffect(() => {
    // An effect may run twice; what it opens is opened once.
    opening.current ??= first.current()
    opening.current.then(
      (value) => setOpened(() => value),
      () => setOpened("failed"),
    )
  }, [])
  return opened
}
