/** The toolbar beside the board: what a drag means, and behind "More" the clipboard. */
import { lazy, memo } from 'react'
import { LazyPanel } from '../controls/LazyPanel.tsx'
import { Popover } from '../controls/Popover.tsx'
import { useStore } from '../document/store.ts'
import { t } from '../words/words.ts'
import { selectTool, toggleAdding, toggleHalves } from './actions/modes.ts'
import { Toolbar, ToolButton } from './Toolbar.tsx'
import { TOOLS } from './tools.ts'

const ClipboardButtons = lazy(async () => ({ default: (await import('./ClipboardButtons.tsx')).ClipboardButtons }))

export const BoardTools = memo(function BoardTools() {
  const tool = useStore(({ view }) => view.tool)
  const halves = useStore(({ view }) => view.halfCells)
  const adding = useStore(({ view }) => view.adding)
  return (
    <div className="tool-column">
      <Toolbar upright name={t('Tools')}>
        <fieldset>
          <legend className="unseen">{t('Select and draw')}</legend>
          {TOOLS.map(({ tool: one, name, caption, icon }) => (
            <ToolButton key={one} name={t(name)} caption={t(caption)} icon={icon} pressed={tool === one} onClick={() => selectTool(one)} />
          ))}
        </fieldset>
        <fieldset>
          <legend className="unseen">{t('Options')}</legend>
          <ToolButton
            name={t('Add to selection')}
            caption={t('Add')}
            icon="M-8 -8H1V1H-8ZM4 -1H8V8H-1V4M-3.5 -6V-1M-6 -3.5H-1"
            pressed={adding}
            onClick={toggleAdding}
          />
          <ToolButton
            name={t('Snap to half squares')}
            caption={t('Halves')}
            icon="M-8 -8H8V8H-8ZM0 -8V-5M0 -2V2M0 5V8"
            pressed={halves}
            onClick={toggleHalves}
          />
        </fieldset>
      </Toolbar>
      <Popover name={t('More')} className="more-tools">
        <LazyPanel>
          <ClipboardButtons />
        </LazyPanel>
      </Popover>
    </div>
  )
})
