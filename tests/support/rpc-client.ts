import { spawn, type ChildProcess } from 'node:child_process'

// Written from the specification, apart from the library that the server is made with: JSON-RPC 2.0 in the base protocol of the Language
// Server Protocol 3.17, a header `Content-Length: n` in bytes, an empty line, and n bytes of JSON.

interface Message {
  readonly id?: number
  readonly method?: string
  readonly params?: unknown
  readonly result?: unknown
  readonly error?: { readonly message: string }
}

/** An editor's end of a language server: a process that is spoken to over its standard streams. */
export interface RpcClient {
  readonly request: <Result>(method: string, params: unknown) => Promise<Result>
  readonly notify: (method: string, params: unknown) => void
  /** The next notification of that method that fits, those before it included. */
  readonly heard: <Params>(method: string, fits: (params: Params) => boolean) => Promise<Params>
  readonly exit: () => Promise<number | null>
  /** What it wrote to its error stream. */
  readonly trouble: () => string
}

/** Starts a program and speaks JSON-RPC with it. */
export function rpcClient(command: string, words: readonly string[]): RpcClient {
  const child = spawn(command, [...words], { stdio: ['pipe', 'pipe', 'pipe'] })
  const heard: Message[] = []
  const answers = new Map<number, (message: Message) => void>()
  let listeners: (() => void)[] = []
  let trouble = ''
  child.stderr.on('data', (bytes: Buffer) => (trouble += bytes.toString()))
  readMessages(child, (message) => {
    if (message.id !== undefined && message.method === undefined) answers.get(message.id)?.(message)
    else heard.push(message)
    const waiting = listeners
    listeners = []
    for (const listener of waiting) listener()
  })
  let last = 0
  return {
    request: async <Result>(method: string, params: unknown) => {
      const id = (last += 1)
      send(child, { id, method, params })
      const answer = await new Promise<Message>((resolve) => answers.set(id, resolve))
      if (answer.error) throw new Error(answer.error.message)
      return answer.result as Result
    },
    notify: (method, params) => send(child, { method, params }),
    heard: async <Params>(method: string, fits: (params: Params) => boolean) => {
      for (;;) {
        const at = heard.findIndex((message) => message.method === method && fits(message.params as Params))
        if (at !== -1) return heard.splice(0, at + 1).at(-1)!.params as Params
        await new Promise<void>((resolve) => listeners.push(resolve))
      }
    },
    exit: () => new Promise((resolve) => {
      if (child.exitCode !== null) resolve(child.exitCode)
      else child.on('close', resolve)
    }),
    trouble: () => trouble,
  }
}

function send(child: ChildProcess, message: Message): void {
  const body = Buffer.from(JSON.stringify({ jsonrpc: '2.0', ...message }))
  child.stdin?.write(Buffer.concat([Buffer.from(`Content-Length: ${body.length}\r\n\r\n`), body]))
}

function readMessages(child: ChildProcess, take: (message: Message) => void): void {
  let bytes = Buffer.alloc(0)
  child.stdout?.on('data', (more: Buffer) => {
    bytes = Buffer.concat([bytes, more])
    for (;;) {
      const end = bytes.indexOf('\r\n\r\n')
      const length = Number(/Content-Length: (\d+)/i.exec(bytes.subarray(0, Math.max(0, end)).toString())?.[1] ?? NaN)
      if (end === -1 || bytes.length < end + 4 + length) return
      take(JSON.parse(bytes.subarray(end + 4, end + 4 + length).toString()) as Message)
      bytes = bytes.subarray(end + 4 + length)
    }
  })
}
