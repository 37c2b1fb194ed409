/** The width of an element in sixteenths of the page's text size. Follows both the window and the text size. */
import { type RefObject, useEffect, useState } from "react"

/** Used until the element was measured: a phone's column. */
export const usualWidth = 340

export const useTextWidth = (frame: RefObject<HTMLElement | null>): number => {
  const [width, setWidth] = useState(usualWidth)
  useEffect(() => {
    const element = frame.current
    if (!element || typeof ResizeObserver === "undefined") return
    // A box of one text size beside the picture notices when only the text size changes.
    const probe = document.createElement("span")
    probe.className = "text-probe"
    element.append(probe)
    const measure = () => {
      const text = probe.getBoundingClientRect().width || 16
      setWidth(Math.round((element.clientWidth / text) * 16) || usualWidth)
    }
    const observer = new ResizeObserver(measure)
    observer.observe(element)
    observer.observe(probe)
    return () => {
      observer.disconnect()
      probe.remove()
    }
  }, [frame])
  return width
}
