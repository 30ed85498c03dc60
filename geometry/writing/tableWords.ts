/**
 * What the tables for a spreadsheet say, in English and in German: the heads of their columns, and the words in them.
 *
 * English heads are names that a formula or a script can use; German heads are words, as the table is for people.
 */
import type { Kind, Method } from '../values/block.ts'
import type { CutRow } from '../values/report.ts'
import { english } from '../words/english.ts'
import { kindWords, METHOD_WORDS } from '../words/englishPhrases.ts'
import { GERMAN_METHODS, ONE_GERMAN_KIND } from '../words/germanPhrases.ts'
import type { Words } from '../words/words.ts'
import { patchWords } from './phrases.ts'

export interface TableForm {
  /** The ids of the block file too. */
  readonly ids?: boolean
  /** Semicolons and decimal commas, with German words. */
  readonly german?: Words
}

interface TableWords {
  readonly messages: Words
  readonly pieces: readonly string[]
  readonly units: readonly string[]
  readonly fabrics: readonly string[]
  readonly shapes: Readonly<Record<CutRow['shape'], string>>
  readonly then: Readonly<Record<CutRow['then'], string>>
  readonly hands: Readonly<Record<'left' | 'right', string>>
  readonly methods: Readonly<Record<Method, string>>
  readonly kind: (kind: Kind) => string
  readonly patch: (name: string) => string
  readonly yes: string
  readonly no: string
  readonly upright: string
}

const ENGLISH: TableWords = {
  messages: english,
  pieces: 'fabric,unit,shape,count,width,length,width_decimal,length_decimal,measure,then,hand,method,for,print'.split(','),
  units: 'unit,kind,hand,count,finished_width,finished_height,unfinished_width,unfinished_height,measure,method,batches,spare,bias,fabrics'.split(
    ',',
  ),
  fabrics: 'fabric,colour,length,usable_width,measure,buy,buy_in,strips,proved'.split(','),
  shapes: { square: 'square', rectangle: 'rectangle', triangle: 'triangle', polygon: 'template' },
  then: { none: '', halve: 'cut once from corner to corner', quarter: 'cut twice from corner to corner' },
  hands: { left: 'left', right: 'right' },
  methods: METHOD_WORDS,
  kind: (kind) => kindWords(kind, 1),
  patch: patchWords,
  yes: 'yes',
  no: 'no',
  upright: 'upright',
}

const GERMAN_PATCHES: Readonly<Record<string, string>> = {
  patch: 'Stück',
  upper: 'obere Hälfte',
  lower: 'untere Hälfte',
  top: 'oben',
  right: 'rechts',
  bottom: 'unten',
  left: 'links',
  goose: 'mittleres Dreieck',
  leftWing: 'linker Flügel',
  rightWing: 'rechter Flügel',
  centre: 'Mitte',
  topLeft: 'oben links',
  topRight: 'oben rechts',
  bottomRight: 'unten rechts',
  bottomLeft: 'unten links',
}

const GERMAN: Omit<TableWords, 'messages'> = {
  pieces: 'Stoff,Einheit,Form,Anzahl,Breite,Länge,Breite dezimal,Länge dezimal,Maß,danach,Seite,Methode,wofür,Druck'.split(','),
  units:
    'Einheit,Art,Seite,Anzahl,fertige Breite,fertige Höhe,Breite mit Nahtzugabe,Höhe mit Nahtzugabe,Maß,Methode,Sätze,übrig,schräger Fadenlauf,Stoffe'.split(
      ',',
    ),
  fabrics: 'Stoff,Farbe,Länge,nutzbare Breite,Maß,kaufen,kaufen in,Streifen,bewiesen'.split(','),
  shapes: { square: 'Quadrat', rectangle: 'Rechteck', triangle: 'Dreieck', polygon: 'Schablone' },
  then: { none: '', halve: 'einmal diagonal schneiden', quarter: 'zweimal diagonal schneiden' },
  hands: { left: 'links', right: 'rechts' },
  methods: GERMAN_METHODS,
  kind: (kind) => ONE_GERMAN_KIND[kind],
  patch: (name) => GERMAN_PATCHES[name] ?? `Streifen ${name.replace('strip', '')}`,
  yes: 'ja',
  no: 'nein',
  upright: 'aufrecht',
}

export const tableWords = ({ german }: TableForm): TableWords => (german === undefined ? ENGLISH : { messages: german, ...GERMAN })
