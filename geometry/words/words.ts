/**
 * What one language says for each message: a sentence, or how it is made of the message's parameters.
 */
import type { Message, MessageCode, MessageParams } from '../values/messages.ts'

/** Each code has its words, made of no other parameters than its own: the type holds it. */
export type Words<Codes extends MessageCode = MessageCode> = {
  readonly [Code in Codes]: keyof MessageParams[Code] extends never ? string : (params: MessageParams[Code]) => string
}

/** The words for a message. A code of a later version, kept with an edit, is said as it is. */
export function say<Code extends MessageCode>(words: Words<Code>, { code, params }: Message<Code>): string {
  const said: string | ((params: never) => string) = words[code] ?? code
  return typeof said === 'string' ? said : said(params as never)
}
