/** What a worker of the page can be, each made from the way it answers. */
import type { DrillTask } from '../drill/drill-service.ts'
import { answerDrillTask } from '../drill/drill-service.ts'
import { fitService } from '../measure/fit-service.ts'
import { orderService } from '../measure/order-service.ts'
import { studyService } from '../measure/study-service.ts'

type Answer = (message: unknown, transfer?: ArrayBuffer[]) => void

export const workerServices = {
  orders: orderService,
  study: studyService,
  fit: fitService,
  drills: (answer: Answer) => (asked: { id: number; task: DrillTask }) => {
    answer({ id: asked.id, answer: answerDrillTask(asked.task) })
  },
}

export type WorkerService = keyof typeof workerServices
