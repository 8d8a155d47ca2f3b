/**
 * Starts a worker of a browser. All services share one module, since each would carry the whole core along. The call is
 * written so that the bundler finds that module.
 */
import type { WorkerService } from './worker-services.ts'

export function startWorker(service: WorkerService): Worker {
  return new Worker(new URL('./worker.ts', import.meta.url), { type: 'module', name: service })
}
