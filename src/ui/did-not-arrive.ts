/**
 * Whether import() failed since code did not arrive, as without a network. Browsers tell it by a TypeError, each in words
 * of its own (Chromium "Failed to fetch dynamically imported module", Firefox "error loading dynamically imported
 * module", WebKit "Importing a module script failed"); a TypeError in the code itself is a fault of ours.
 */
export function didNotArrive(error: unknown): boolean {
  return error instanceof TypeError && /import(ed|ing)\b.*\bmodule\b/i.test(error.message)
}
