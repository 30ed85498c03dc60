/** Words as they stand in XML: signs with a meaning there are written out, and letters that XML forbids are left out. */
export const escapeXml = (text: string): string => text.replace(FORBIDDEN, '').replace(/[&<>"]/g, (sign) => ESCAPES[sign] as string)

const ESCAPES: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' }

/** Letters that XML forbids: they are no letters. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: they are what must go.
const FORBIDDEN = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]/g
