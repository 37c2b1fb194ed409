/** Hands a text, bytes or a file to the browser as a download. */
const save = (name: string, content: Blob): void => {
  const link = document.createElement("a")
  link.href = URL.createObjectURL(content)
  link.download = name
  link.click()
  setTimeout(() => URL.revokeObjectURL(link.href), 10_000)
}

export const saveText = (name: string, text: BlobPart, type = "application/x-ndjson"): void =>
  save(name, new Blob([text], { type }))

/** The file under its own name. */
export const saveFile = (file: File): void => save(file.name, file)
