/** A measured run in a process of its own, ended when its minute is over. */
import { fork } from 'node:child_process'

/** What the child sends, or null where there was no answer in time. */
export function inTime<Run>(child: URL, args: readonly string[], limit: number): Promise<Run | null> {
  return new Promise((resolve, reject) => {
    const run = fork(child, args)
    let found: Run | null = null
    let late = false
    const end = setTimeout(() => {
      late = true
      run.kill('SIGKILL')
    }, limit)
    run.on('message', (told) => {
      found = told as Run
    })
    run.on('error', reject)
    run.on('exit', (code) => {
      clearTimeout(end)
      if (found !== null || late) resolve(found)
      else reject(new Error(`${args.join(', ')}: ended with ${code}`))
    })
  })
}
