/** What has just been done, in one line that fades; what was said before it is in a list that opens. */
import { useStore } from '../document/store.ts'
import { Popover } from './Popover.tsx'
import { t } from '../words/words.ts'

export function Notice() {
  const notice = useStore(({ view }) => view.notice)
  const notices = useStore(({ view }) => view.notices)
  return (
    <p className="notice" role="status" aria-live="polite">
      {/* A new element for each notice, so that a repeated sentence is announced again, and fades again. */}
      <span key={notices}>{notice}</span>
    </p>
  )
}

/** The last sentences, the newest first. */
export function NoticeLog() {
  const log = useStore(({ view }) => view.log)
  return (
    <Popover name={t('Log')} className="upward log">
      <div className="popover-content">
        {log.length === 0 ? (
          <p>{t('Nothing has happened yet.')}</p>
        ) : (
          <ol>
            {log.map((line, index) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: the same sentence can stand there twice
              <li key={index}>{line}</li>
            ))}
          </ol>
        )}
      </div>
    </Popover>
  )
}
