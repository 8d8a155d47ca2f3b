/** The files that were dropped, those in folders as well. */

/** Far more than a class hands in; it keeps a whole disk that was dropped by mistake from being walked. */
const mostFiles = 50_000

/** Has to be called while the drop is being handled; only what it returns may be waited for. */
export function droppedFiles(transfer: DataTransfer): Promise<File[]> {
  const entries = Array.from(transfer.items, (item) => item.webkitGetAsEntry())
  const plain = Array.from(transfer.files)
  return entries.some((entry) => entry?.isDirectory) ? walked(entries) : Promise.resolve(plain)
}

async function walked(entries: readonly (FileSystemEntry | null)[]): Promise<File[]> {
  const files: File[] = []
  const waiting = entries.filter((entry) => entry !== null)
  for (let entry = waiting.pop(); entry && files.length < mostFiles; entry = waiting.pop()) {
    if (entry.isFile) files.push(await fileOf(entry as FileSystemFileEntry))
    else waiting.push(...(await childrenOf(entry as FileSystemDirectoryEntry)))
  }
  return files.filter(isMeant)
}

/** What systems put into folders by themselves is nobody's result. */
export function isMeant({ name }: Pick<File, 'name'>): boolean {
  return !name.startsWith('.') && !/^(desktop\.ini|thumbs\.db)$/i.test(name)
}

function fileOf(entry: FileSystemFileEntry): Promise<File> {
  return new Promise((resolve, reject) => entry.file(resolve, reject))
}

/** A folder gives its entries a hundred at a time, until it gives none. */
async function childrenOf(entry: FileSystemDirectoryEntry): Promise<FileSystemEntry[]> {
  const reader = entry.createReader()
  const all: FileSystemEntry[] = []
  for (;;) {
    const some = await new Promise<FileSystemEntry[]>((resolve, reject) => reader.readEntries(resolve, reject))
    if (some.length === 0) return all
    all.push(...some)
  }
}
