/** The toolbar beside the board: what a drag means, and the clipboard. */
import { memo } from 'react'
import { useStore } from '../document/store.ts'
import { t } from '../words/words.ts'
import { copyByButton, pasteByButton } from './actions/clipboard.ts'
import { selectTool, toggleAdding, toggleHalves } from './actions/modes.ts'
import { Toolbar, ToolButton } from './Toolbar.tsx'
import { TOOLS } from './tools.ts'

export const BoardTools = memo(function BoardTools() {
  const tool = useStore(({ view }) => view.tool)
  const count = useStore(({ view }) => view.selected.length)
  const halves = useStore(({ view }) => view.halfCells)
  const adding = useStore(({ view }) => view.adding)
  return (
    <Toolbar upright name={t('Tools')}>
      <fieldset>
        <legend className="unseen">{t('Select and draw')}</legend>
        {TOOLS.map(({ tool: one, name, icon }) => (
          <ToolButton key={one} name={t(name)} icon={icon} pressed={tool === one} onClick={() => selectTool(one)} />
        ))}
      </fieldset>
      <fieldset>
        <legend className="unseen">{t('Options')}</legend>
        <ToolButton name={t('Add to selection')} icon="M-8 -8H1V1H-8ZM4 -1H8V8H-1V4M-3.5 -6V-1M-6 -3.5H-1" pressed={adding} onClick={toggleAdding} />
        <ToolButton name={t('Snap to half squares')} icon="M-8 -8H8V8H-8ZM0 -8V-5M0 -2V2M0 5V8" pressed={halves} onClick={toggleHalves} />
      </fieldset>
      <fieldset>
        <legend className="unseen">{t('Clipboard')}</legend>
        <ToolButton name={t('Copy')} icon="M-7 -7H3V3H-7ZM-3 3V7H7V-3H3" disabled={count === 0} onClick={() => void copyByButton(false)} />
        <ToolButton
          name={t('Cut')}
          icon="M-5.5 -8.5L3.7 4.2M5.5 -8.5L-3.7 4.2M-7.6 6A2.4 2.4 0 1 0 -2.8 6A2.4 2.4 0 1 0 -7.6 6M2.8 6A2.4 2.4 0 1 0 7.6 6A2.4 2.4 0 1 0 2.8 6"
          disabled={count === 0}
          onClick={() => void copyByButton(true)}
        />
        <ToolButton name={t('Paste')} icon="M-6 -6H-3M3 -6H6V8H-6V-6M-3 -8H3V-4H-3ZM-3 1H3M-3 4H2" onClick={() => void pasteByButton()} />
      </fieldset>
    </Toolbar>
  )
})
