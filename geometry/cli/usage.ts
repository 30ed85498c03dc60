/** What `nestwright --help` prints: every command with its options. */
export const USAGE = `Usage: nestwright COMMAND

  report FILE                 the report of a block file, as JSON
  cutlist FILE [--csv]        what to cut, for people or as CSV
    --of pieces|units|cloth   which table --csv prints
  steps FILE                  the numbered making steps
  chart [options]             a size chart
    --kind geese|hst|hourglass|diamond   (geese, four at a time)
    --unit in|cm  --seam 1/4  --from 1 --to 12 --step 1/2  --csv
    --larger 1/8              squares cut so much larger, to be trimmed
  setting FILE --columns 3 --rows 2    copies set edge to edge, as JSON
    --turn none|alternate|free         every other one turned a quarter; or as nests best
    --press same|alternate|free        every other one pressed the opposite way; or as nests best
  sewn FILE SEWN              what a sewn block differs in from the one laid out, as JSON
  booklet FILE OUT.pdf        the printable booklet
    --paper a4|letter         (Letter for inches, A4 for centimetres)
    --only cutlist|chart|colouring|templates   these pages alone
  picture FILE OUT.svg        a picture of the block, to scale
    --view cloth|value|outline|wrong|seams|quilting

FILE may be a booklet: the block that lies inside is read.

Exit status: 0 done; 1 the layout has an error among its problems; 2 the file or the arguments could not be used.
`
