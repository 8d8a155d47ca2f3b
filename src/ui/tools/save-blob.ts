/** Hands something drawn or written to the person as a file of their own; nothing leaves the computer. */
export function saveBlob(name: string, blob: Blob): void {
  const link = document.createElement('a')
  const url = URL.createObjectURL(blob)
  link.href = url
  link.download = name
  link.click()
  // The download has been handed over by then.
  setTimeout(() => URL.revokeObjectURL(url), 10_000)
}
