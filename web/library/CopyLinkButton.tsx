/** Copies a link that holds the whole block. If the browser does not allow copying, the link is shown to be copied by hand. */
import { useState } from 'react'
import { setView } from '../document/store.ts'
import { documentOf } from '../keeping/openBlock.ts'
import { linkTo } from '../keeping/shareLink.ts'
import { t } from '../words/words.ts'

export function CopyLinkButton({ id }: { readonly id: string }) {
  const [link, setLink] = useState<string | null>(null)
  const copy = async (): Promise<void> => {
    const block = await documentOf(id)
    if (block === null) return
    const made = await linkTo(block, window.location.href)
    if (!made.ok) {
      setView({
        notice:
          made.why === 'too long'
            ? t('This block is too large for a link. Save it as a file.')
            : t('This browser can’t make links. Save a file instead.'),
      })
      return
    }
    const copied = await navigator.clipboard.writeText(made.link).then(
      () => true,
      () => false,
    )
    setLink(copied ? null : made.link)
    setView({ notice: noticeWords(copied, made.photographs) })
  }
  return (
    <>
      <button type="button" onClick={() => void copy()}>
        {t('Copy link')}
      </button>
      {link !== null && (
        <label className="link">
          {t('Link')}
          <input readOnly value={link} onFocus={(event) => event.target.select()} />
        </label>
      )}
    </>
  )
}

const noticeWords = (copied: boolean, photographs: boolean): string =>
  [
    copied ? t('Link copied. It holds the whole block.') : t('The link is beside the button. It holds the whole block.'),
    ...(photographs ? [t('Photos are left out.')] : []),
  ].join(' ')
