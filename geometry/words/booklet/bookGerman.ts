/** What frames the steps, in German: facts, cautions, the seam allowance, templates, layering, quilting and the edge. */
import type { bookEnglish } from './bookEnglish.ts'

const listed = (words: readonly (string | number)[]): string =>
  words.length < 2 ? String(words[0] ?? '') : `${words.slice(0, -1).join(', ')} und ${words.at(-1)}`
const count = (number: number, one: string, many: string): string => `${number} ${number === 1 ? one : many}`
const capital = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`

export const bookGerman: typeof bookEnglish = {
  parts: {
    cut: 'Zuschneiden',
    units: 'Die Einheiten nähen',
    'lay out': 'Auslegen',
    join: 'Zusammennähen',
    borders: 'Die Ränder annähen',
    sandwich: 'Schichten',
    quilt: 'Quilten',
    finish: 'Fertig machen',
  },
  introduction: (name, finished, framed) =>
    `${name === null ? 'Dieser Block' : `„${name}“`} misst fertig ${finished}${framed === null ? '' : `, mit den Rändern ${framed}`}. Lies alle Schritte, bevor du schneidest.`,
  facts: {
    makes: 'Ergibt',
    finished: 'Fertige Größe',
    unfinished: 'Größe mit Nahtzugaben',
    withBorders: 'Mit Rändern und Nahtzugaben',
    allowance: 'Nahtzugabe',
    pieces: 'Teile zu schneiden',
    sewnIn: 'Genäht in',
    seams: 'Nähte',
  },
  blocks: (number) => count(number, 'Block', 'Blöcke'),
  orders: { rows: 'Reihen', columns: 'Spalten', sections: 'Abschnitten' },

  cautions: {
    first: {
      title: 'Zuallererst',
      sentences: [
        'Wenn die Anleitung deines Werkzeugs oder deine Lehrerin etwas anderes sagt, gilt das.',
        'Trag Schuhe, halt den Boden frei von Kabeln und Nadeln, und merk dir, wo der Stecker ist.',
      ],
    },
    blade: {
      title: 'Rollschneider',
      sentences: [
        'Schließ die Klinge nach jedem Schnitt, bevor du ihn weglegst.',
        'Steh auf und schneide von dir weg, am Lineal, auf der Matte.',
        'Lass die Finger hinter der Kante des Lineals und keine Nadeln auf der Matte.',
        'Wechsle eine stumpfe Klinge und wickle die alte ein, bevor du sie wegwirfst. Kinder schneiden nur mit einem Erwachsenen daneben.',
      ],
    },
    iron: {
      title: 'Bügeleisen und Dampf',
      sentences: [
        'Stell das Eisen auf, außer Reichweite von Kindern. Zieh danach den Stecker, am Stecker und nicht am Kabel.',
        'Halt die Hände trocken und aus dem Dampf. Lass den Stoff abkühlen, bevor du eine Naht anfasst.',
      ],
    },
    needle: {
      title: 'Nadel und Nähfuß',
      sentences: [
        'Lass die Finger neben dem Nähfuß, nie vor der Nadel.',
        'Zieh Stecknadeln heraus, bevor sie zur Nadel kommen, und steck sie ins Nadelkissen, nicht in den Mund.',
        'Schalt die Maschine aus, bevor du einfädelst oder die Nadel wechselst.',
      ],
    },
    glue: {
      title: 'Kleber, Spray und Nadeln',
      sentences: [
        'Nimm Stoffkleber oder Sprühkleber, wie das Etikett sagt, bei offenem Fenster und weg vom Bügeleisen. Halt ihn von Kindern fern.',
        'Zähl die Nadeln beim Stecken und wieder beim Herausziehen.',
      ],
    },
  },
  allowanceIncluded: (seam) => `In allen Größen sind Nahtzugaben von ${seam} enthalten. Ob du sie voll oder knapp nähst, entscheidest du.`,
  scantAllowance: (seam, geese) =>
    geese
      ? `Viele nähen Gänse, vier auf einmal, mit vollen ${seam} und fügen mit knappen zusammen, ein bis zwei Fäden weniger. So bleiben über der Spitze volle ${seam}. Andere nähen überall knapp und schneiden zu.`
      : `Viele nähen überall knappe ${seam}: ein bis zwei Fäden weniger.`,
  foldTakesFabric: 'Faden und Falz jeder Naht nehmen etwas Stoff weg. Mit voller Zugabe wird darum jedes Teil etwas zu klein.',
  findYours: ({ strip, across, middle }) =>
    `So findest du deine: Näh drei Streifen, je ${strip} breit, aneinander und bügle. Messen sie zusammen ${across} und der mittlere genau ${middle}, stimmt deine Zugabe. Ist es weniger, näh einen Faden schmaler.`,

  cannotSewYet: 'Dieser Block lässt sich noch nicht nähen. Behebe zuerst das hier, dann mach das Heft neu.',
  square: (column, row) => `Spalte ${column}, Reihe ${row}`,
  placed: (places, rest, said) => `${places.join('; ')}${rest > 0 ? ` und ${rest} mehr` : ''}: ${said}`,
  setInSeams: (number) =>
    `${number === 1 ? '1 Naht wird' : `${number} Nähte werden`} in eine Ecke eingesetzt. Näh langsam und markier die Ecken, wie ${number === 1 ? 'ihr Schritt sagt' : 'ihre Schritte sagen'}.`,
  partialSeams: (number) =>
    `${number === 1 ? '1 Naht wird' : `${number} Nähte werden`} zuerst nur ein Stück weit genäht. Schließ sie, wenn die Nachbarn dran sind.`,
  grainAtEdge: (letters) =>
    `${letters.length === 1 ? 'Schablone' : 'Die Schablonen'} ${listed(letters)} ${letters.length === 1 ? 'hat' : 'haben je'} eine Kante am Rand des Blocks. Leg den Pfeil in den Fadenlauf, damit sie sich nicht dehnt.`,
  lettered: (letters, said) => `${listed(letters)}: ${said}`,
  toFinish: (layers, binding, blocks) => `Zum Fertigmachen${blocks > 1 ? ' jedes Blocks' : ''}: ${layers}; ${binding} Stoff für die Einfassung.`,
  tools: (templates) =>
    `Werkzeug: Rollschneider, Lineal und Matte; Nähmaschine und Garn; Stecknadeln; Bügeleisen; auswaschbarer Stift oder Kreide${templates ? '; Karton und Papierschere für die Schablonen' : ''}.`,

  template: (letters, kind) => `Schablone ${letters}, ${kind}`,
  cutWithTemplate: (fabric, plain, flipped) =>
    `${fabric}: ${listed([...(plain > 0 ? [`${plain} wie gezeichnet`] : []), ...(flipped > 0 ? [`${flipped} mit gewendeter Schablone`] : [])])}.`,
  howToCutTemplate: (seam, notches) =>
    `Schneide auf der äußeren Linie, ${seam} neben der Nahtlinie. Leg den Pfeil in den Fadenlauf.${notches ? ' Markier die Kerben: Dort treffen die Nähte der Nachbarn auf.' : ''}`,
  markCornerDots: 'Markier auch die Punkte, auf der linken Seite: Dort beginnen und enden Nähte.',
  templatePicture: (name, notches) =>
    `${name}: Schnittlinie, darin die Nahtlinie, ein Pfeil im Fadenlauf${notches ? ', Kerben, wo Nähte auftreffen' : ''}.`,

  nothingToCheck: 'Es gibt nichts zu prüfen: Dieser Block hat keine Nähte.',
  nothingDepends: 'Es gibt nichts zu prüfen: Alles Genähte behält seine Größe oder wird zugeschnitten.',
  noRectangle: 'Kein Teil dieses Blocks ist ein Rechteck, also gibt es keine Größe zu prüfen.',
  wholeBlock: 'Der Block',
  blockWithBorders: 'Der Block mit seinen Rändern',
  ifOff: ({ off, what, planned, wide, narrow }) =>
    `Jede Naht braucht zwei Zugaben. Ist jede ${off} zu breit, misst ${what.replace(/^Der /, 'der ')} ${wide} statt ${planned}. Ist jede ${off} zu schmal, misst er ${narrow}.`,
  seamsCrossed: (across, down) =>
    `Das sind ${count(across, 'Naht', 'Nähte')} quer und ${count(down, 'Naht', 'Nähte')} längs, wo es die meisten sind. Zugeschnittene Einheiten zählen als ein Teil.`,
  unequal: (most, least, down, apart) =>
    `${capital(most.name)} ${most.many ? 'haben' : 'hat'} ${count(most.seams, 'Naht', 'Nähte')} ${down ? 'längs' : 'quer'}, ${least.name} ${least.many ? 'haben' : 'hat'} ${least.seams}. Mit so breiten Zugaben ${most.many ? 'werden' : 'wird'} ${most.name} um ${apart} kürzer, und sie passen nicht mehr zusammen.`,

  stopHere: 'Wenn dieser Block in einen Quilt kommt, halt hier an: Näh ihn erst an seine Nachbarn, bevor du schichtest und quiltest.',
  layersPicture: {
    backing: 'Rückseite, linke Seite oben',
    batting: 'Vlies',
    title: 'Drei Lagen: unten die Rückseite, linke Seite oben, darauf das Vlies und das Top, rechte Seite oben.',
  },
  layerTitle: 'Leg die drei Lagen aufeinander',
  pressTop: 'Bügle das Top noch einmal und schneide lose Fäden ab, damit keine durchscheinen.',
  cutLayers: (layers) => `Schneide ${layers}.`,
  layers: (backing, batting) => (backing === batting ? `Rückseite und Vlies je ${backing}` : `die Rückseite ${backing} und das Vlies ${batting}`),
  tapeBacking: 'Kleb die Rückseite fest, linke Seite oben, glatt, aber nicht gedehnt. Leg das Vlies mittig darauf, dann das Top, rechte Seite oben.',
  pinLayers:
    'Steck oder hefte durch alle drei Lagen, von der Mitte nach außen, etwa eine Handbreit auseinander. Halt Nadeln von den Nähten fern, an denen du quiltest.',
  finishTitle: 'Mach den Rand fertig',
  trimLayers: 'Schneide Rückseite und Vlies bündig mit dem Top ab, mit rechtwinkligen Ecken.',
  binding: ({ strips, width, length }) =>
    `Schneide für die Einfassung ${count(strips, 'Streifen', 'Streifen')}, ${width} breit, quer zum Stoff.${strips > 1 ? ` Näh sie mit schrägen Nähten auf ${length} zusammen.` : ''} Bügle den ${strips > 1 ? 'langen ' : ''}Streifen der Länge nach links auf links zur Hälfte.`,
  sewBinding: 'Näh ihn vorn an die offenen Kanten, mit einer Briefecke an jeder Ecke. Klapp ihn nach hinten und näh ihn fest.',
  sewLabel: 'Näh hinten ein Etikett an: wer ihn gemacht hat, wo und wann.',
  bindingPicture: 'Die Einfassung rund um den Rand, in jeder Ecke eine Briefecke.',

  quilt: {
    pictures: {
      whole: 'Die Quiltlinie an den Nähten entlang, ihre Halte nummeriert vom Anfang bis zum Ende.',
      fills: 'Die Linien, die die Teile füllen.',
      place: (part, of) => `Teil ${part} von ${of} im Block.`,
      part: (part) => `Die Quiltlinie von Teil ${part}, ihre Halte nummeriert vom Anfang bis zum Ende.`,
    },
    title: 'Quilte an den Nähten entlang',
    low: 'Quilte auf der niedrigen Seite jeder Naht, wo keine Zugaben liegen. Wo eine Naht auseinandergebügelt ist, quilte in ihrer Mitte. Ein Obertransportfuß hält die Lagen zusammen.',
    fills: (number, spacing) =>
      `Füll dann die Teile, wie die gestrichelten Linien zeigen: ${count(number, 'Linie', 'Linien')}, ${spacing} auseinander. Jede hat ihren eigenen Anfang.`,
    secure: 'Sichere beide Enden jeder Linie.',
    along: (length, lines, twice) =>
      `Quilte im Nahtschatten, an den Nähten entlang: ${length} in ${lines === 1 ? 'einer Linie' : `${lines} Linien`}. ${twice === null ? 'Keine Naht wird zweimal gequiltet.' : `${twice} davon werden zweimal gequiltet.`}`,
    begin: (twice) =>
      `Beginn bei „Start 1“ und hör bei „End“ auf. Geh von jeder Zahl geradewegs zur nächsten, wie die Pfeile zeigen.${twice ? ' Wo zwei Linien nebeneinander laufen, quiltest du die Naht zweimal.' : ''}`,
    again: 'Schneide bei jedem „End“ die Fäden ab und beginn neu beim nächsten „Start“.',
    inParts: (length, parts) =>
      `Quilte im Nahtschatten, an den Nähten entlang: ${length} in ${parts} Teilen. Beginn mit Teil 1 in der Mitte und arbeite nach außen.`,
    beginParts:
      'Beginn in jedem Teil bei „Start 1“ und hör bei „End“ auf. Geh von jeder Zahl geradewegs zur nächsten, wie die Pfeile zeigen. Wo zwei Linien nebeneinander laufen, quiltest du die Naht zweimal.',
    againInParts: 'Wo ein Teil mehr als einen „Start“ hat, schneide bei jedem „End“ die Fäden ab und beginn neu beim nächsten.',
    length: (length) => `Quilte im Nahtschatten, an den Nähten entlang: ${length}.`,
    onScreen:
      'Diese Linie hat zu viele Wendungen für Papier. Öffne auf dem Bildschirm „Quilten“ und beweg die Nadel an der Linie entlang, um zu sehen, wie es weitergeht.',
  },
}
