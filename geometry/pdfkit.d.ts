/** The PDF library, as far as the pages use it. */
declare module 'pdfkit' {
  const Pdf: import('./printing/library.ts').NewPdf
  export default Pdf
}
