/** Hands a text to the person as a file of their own; nothing leaves the computer. */
export function saveText(name: string, type: string, text: string): void {
  const link = document.createElement('a')
  const url = URL.createObjectURL(new Blob([text], { type }))
  link.href = url
  link.download = name
  link.click()
  // The download has been handed over by then.
  setTimeout(() => URL.revokeObjectURL(url), 10_000)
}
