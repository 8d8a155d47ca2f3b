/** Hands a text to the person as a file of their own; nothing leaves the computer. */
import { saveBlob } from '../tools/save-blob.ts'

export function saveText(name: string, type: string, text: string): void {
  saveBlob(name, new Blob([text], { type }))
}
