/** Which control of the bench a change belongs to, so that a lesson can keep a control as it is. */
import type { Control } from '../lesson/control.ts'
import type { Ink } from '../press/setup.ts'
import type { Change, PaperField } from './change.ts'

const ofInk: Partial<Record<keyof Ink, Control>> = {
  tack: 'tack',
  film: 'film',
  coverage: 'coverage',
  temperature: 'unit temperature',
  dampening: 'unit dampening',
}

const ofPaper: Record<PaperField, Control> = {
  surfaceStrength: 'surface strength',
  absorbency: 'absorbency',
  evenness: 'paper',
}

/** Null for what no control of a lesson stands for: the lesson itself loads set-ups. */
export function controlOf(change: Change): Control | null {
  switch (change.kind) {
    case 'move ink':
      return 'order'
    case 'edit ink':
      return ofInk[change.field] ?? 'inks'
    case 'add ink':
    case 'remove ink':
    case 'take scenario':
      return 'inks'
    case 'take paper':
      return 'paper'
    case 'edit paper':
      return ofPaper[change.field]
    case 'take press':
      return 'kind'
    case 'edit press':
      return change.field
    case 'read':
    case 'run on':
      return 'sheet'
    case 'seed':
    case 'load':
      return null
  }
}
