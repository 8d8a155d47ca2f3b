/**
 * The median processor time (ms) of `times` runs of `work`, after one that is not counted unless it is the only one.
 * Processor time, so that what else the machine is doing hardly shows; quick work is run in batches of some 10 ms, since
 * the system counts no finer.
 */
export function medianTime(work: () => unknown, times: number): number {
  const batch = times > 1 ? Math.max(1, Math.ceil(10 / Math.max(0.001, processorTime(work, 1)))) : 1
  const taken = Array.from({ length: times }, () => processorTime(work, batch) / batch)
  return taken.sort((a, b) => a - b)[times >> 1]
}

function processorTime(work: () => unknown, batch: number): number {
  const start = process.cpuUsage()
  for (let run = 0; run < batch; run++) work()
  const { user, system } = process.cpuUsage(start)
  return (user + system) / 1000
}
