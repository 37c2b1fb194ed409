/** Hands a text, or bytes, to the browser as a download. */
export const saveText = (name: string, text: BlobPart, type = "application/x-ndjson"): void => {
  const link = document.createElement("a")
  link.href = URL.createObjectURL(new Blob([text], { type }))
  link.download = name
  link.click()
  setTimeout(() => URL.revokeObjectURL(link.href), 10_000)
}
