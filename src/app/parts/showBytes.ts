/** Amounts of storage for the screen, to two digits and in steps of a thousand. */

const units = ["B", "kB", "MB", "GB", "TB"] as const

/** "8.3 MB", "120 kB". */
export const showBytes = (bytes: number): string => {
  const step = Math.min(units.length - 1, Math.floor(Math.log10(Math.max(1, bytes)) / 3))
  const shown = bytes / 1000 ** step
  return `${shown >= 100 || step === 0 ? Math.round(shown) : Number(shown.toPrecision(2))} ${units[step]}`
}
