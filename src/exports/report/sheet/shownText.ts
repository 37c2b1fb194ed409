/**
 * Text as the report's letters can show it. A sign that they lack, one that has no look of its own, and writing that runs
 * from right to left (which would come out in the wrong order) each become one visible "�" and are counted; nothing is
 * dropped, and what was meant stands in the job file.
 */

/** Shown in the place of a sign that cannot be. */
export const standIn = "�"

/** Signs that were not shown, by code point, with how often. */
export type NotShown = Map<number, number>

const rightToLeft =
  /[\p{Script=Hebrew}\p{Script=Arabic}\p{Script=Syriac}\p{Script=Thaana}\p{Script=Nko}\p{Script=Mandaic}]/u
const hidden = /[\p{Cc}\p{Cf}\p{Zl}\p{Zp}\p{Cs}]/u

/** `has` says whether the letters hold a sign. Line breaks stay, tabs become spaces. */
export const shownText = (text: string, has: (codePoint: number) => boolean, notShown: NotShown): string => {
  const plain = text.replaceAll(/\r\n?/g, "\n").replaceAll("\t", " ")
  let shown = ""
  for (const sign of plain) {
    const code = sign.codePointAt(0)!
    const fits = sign === "\n" || (!hidden.test(sign) && !rightToLeft.test(sign) && has(code))
    if (!fits) notShown.set(code, (notShown.get(code) ?? 0) + 1)
    shown += fits ? sign : standIn
  }
  return shown
}

/** "U+4E2D three times" and so on, at most `most` of them, in words for the end of the report; empty where all was shown. */
export const notShownWords = (notShown: NotShown, most = 40): string => {
  if (notShown.size === 0) return ""
  const total = [...notShown.values()].reduce((sum, times) => sum + times, 0)
  const named = [...notShown].slice(0, most).map(([code, times]) => {
    const name = `U+${code.toString(16).toUpperCase().padStart(4, "0")}`
    return times === 1 ? name : `${name} (${times} times)`
  })
  const more = notShown.size > most ? `, and ${notShown.size - most} others` : ""
  return (
    `${total} of the signs in this report could not be shown, and a ${standIn} stands in their place: ` +
    `${named.join(", ")}${more}. They are whole in the job file.`
  )
}
