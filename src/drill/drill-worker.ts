/** Entry of a worker for the drills, in a browser; see drill-service.ts. */
import type { DrillTask } from './drill-service.ts'
import { answerDrillTask } from './drill-service.ts'

addEventListener('message', ({ data }: MessageEvent<{ id: number; task: DrillTask }>) => {
  postMessage({ id: data.id, answer: answerDrillTask(data.task) })
})
