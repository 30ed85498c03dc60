/** Times as the library shows them, in the language of the page and as the browser's region writes them. */
import { pageLocale, t } from '../words/words.ts'

/** Today's times by the hour, older ones by the day. */
export function dayOrTime(time: number, now = Date.now()): string {
  const date = new Date(time)
  const today = date.toDateString() === new Date(now).toDateString()
  if (today) return t('today at {time}', { time: date.toLocaleTimeString(pageLocale(), { timeStyle: 'short' }) })
  return date.toLocaleDateString(pageLocale(), { day: 'numeric', month: 'long', year: 'numeric' })
}

export const dateAndTime = (time: number): string => new Date(time).toLocaleString(pageLocale(), { dateStyle: 'medium', timeStyle: 'short' })
