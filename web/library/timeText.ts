/** Times as the library shows them, in the language of the page. */
import { currentLanguage, t } from '../words/words.ts'

/** Today's times by the hour, older ones by the day. */
export function dayOrTime(time: number): string {
  const date = new Date(time)
  const today = date.toDateString() === new Date().toDateString()
  if (today) return t('today, {time}', { time: date.toLocaleTimeString(currentLanguage(), { hour: '2-digit', minute: '2-digit' }) })
  return date.toLocaleDateString(currentLanguage(), { day: 'numeric', month: 'long', year: 'numeric' })
}

export const dateAndTime = (time: number): string => new Date(time).toLocaleString(currentLanguage(), { dateStyle: 'medium', timeStyle: 'short' })
