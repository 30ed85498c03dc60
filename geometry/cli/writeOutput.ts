/** The whole file or nothing: it is written next to its place under another name, then renamed. */
import { renameSync, rmSync, writeFileSync } from 'node:fs'
import { printable, refuse } from './result.ts'

/** Refuses where the file cannot be written, and leaves nothing behind. */
export function writeOutput(file: string, bytes: Uint8Array): void {
  const unfinished = `${file}.${process.pid}.part`
  try {
    writeFileSync(unfinished, bytes)
    renameSync(unfinished, file)
  } catch (error) {
    removeIfThere(unfinished)
    refuse(printable(file), CANNOT_WRITE[(error as NodeJS.ErrnoException).code ?? ''] ?? 'cannot be written')
  }
}

/** Where not even that is allowed, nothing was begun. */
function removeIfThere(file: string): void {
  try {
    rmSync(file, { force: true })
  } catch {}
}

const CANNOT_WRITE: Readonly<Record<string, string>> = {
  ENOENT: 'its folder does not exist',
  ENOTDIR: 'its folder does not exist',
  EISDIR: 'is a folder; give a file name',
  EACCES: 'may not be written by this user',
  EPERM: 'may not be written by this user',
  EROFS: 'lies on a disk that may not be written',
  ENOSPC: 'the disk is full',
  ENAMETOOLONG: 'is too long a name; give a shorter one',
}
