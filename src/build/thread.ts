import { Worker } from 'node:worker_threads'

/** A thread that answers one question after the other. */
export interface Thread<Question, Answer> {
  ask(question: Question): Promise<Answer>
  close(): Promise<unknown>
}

/** Begins a thread with a module that posts one answer for each message. What goes wrong in it is thrown here. */
export function openThread<Question, Answer>(module: URL): Thread<Question, Answer> {
  const worker = new Worker(module)
  return {
    ask: (question) => new Promise((resolve, reject) => {
      const done = (settle: () => void) => {
        worker.off('message', onMessage).off('error', onError)
        settle()
      }
      const onMessage = (message: Answer) => done(() => resolve(message))
      const onError = (error: unknown) => done(() => reject(error))
      worker.on('message', onMessage).on('error', onError)
      worker.postMessage(question)
    }),
    close: () => worker.terminate(),
  }
}
