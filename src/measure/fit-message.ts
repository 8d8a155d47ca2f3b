/** What a fitting worker tells the page. */
import type { Fit } from './fit.ts'
import type { FitProgress } from './fit-search.ts'
import type { Refused } from './said.ts'

export type FromFitWorker =
  { readonly kind: 'step'; readonly progress: FitProgress } | { readonly kind: 'done'; readonly result: Fit | Refused }
