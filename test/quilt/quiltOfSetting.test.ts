/** Repeated blocks become a quilt that lies and nests as they did. */
import { describe, expect, it } from 'vitest'
import { checkQuilt, quiltLayout, quiltReport, settingReport, type SettingRequest } from '../../geometry/index.ts'
import { eveningStar } from '../../web/document/starters/eveningStar.ts'
import { lantern } from '../../web/document/starters/lantern.ts'
import { quiltOfSetting } from '../../web/sheets/setting/quiltOfSetting.ts'

const REQUESTS: readonly SettingRequest[] = [
  { columns: 2, rows: 2, turn: 'none', press: 'same' },
  { columns: 3, rows: 2, turn: 'none', press: 'alternate' },
  { columns: 2, rows: 2, turn: 'none', press: 'same', turns: [0, 2, 2, 0] },
]

describe('a quilt of repeated blocks', () => {
  it.each([eveningStar, lantern].flatMap((block) => REQUESTS.map((request) => ({ name: block.name, block, request }))))(
    'of $name lies as they do, and nests as they do',
    ({ block, request }) => {
      const setting = settingReport(block, request)
      if (!setting.ok) throw new Error(setting.place)
      const quilt = quiltOfSetting(block, setting.value)
      expect(checkQuilt(quilt)).toMatchObject({ ok: true })
      expect(quiltLayout(quilt).places.every(({ fit }) => fit === 'fits')).toBe(true)
      expect(quilt.places.map(({ at, turn = 0, press = 'planned' }) => [at, turn, press])).toEqual(
        setting.value.places.map(({ at, turn, press }) => [at, turn, press === 'opposite' ? 'opposite' : 'planned']),
      )
      expect(quiltReport({ ...quilt, order: 'rows' }).pressing.between).toBe(setting.value.clashes.between)
    },
  )
})
