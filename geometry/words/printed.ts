/**
 * Values of the geometry as JSON prints them: each message in English, every other field as it is and where it is.
 */
import type { Message } from '../values/messages.ts'
import { inEnglish } from './english.ts'

/** For `JSON.stringify`: a field's value as it is printed. */
export const printed = (_field: string, value: unknown): unknown => (isMessage(value) ? inEnglish(value) : value)

const isMessage = (value: unknown): value is Message => typeof value === 'object' && value !== null && 'code' in value && 'params' in value
