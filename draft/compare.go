package draft

import (
	"math"

	"ellwand/draft/construct"
)

// matching is how far two seams that are sewn edge to edge may differ, in mm.
const matching = construct.Matching

// noLimit stands for the most where longer does no harm.
const noLimit = construct.NoLimit

// compare makes a row; least and most are the normal range of the difference.
func compare(seam, of string, length float64, against string, other, least, most float64,
	normal construct.Sentence) Row {
	row := Row{
		Seam: seam, Of: of, Against: against, OfLength: length, AgainstLength: other,
		Difference: length - other, Least: least, Most: most, Normal: normal,
	}
	// A hundredth of a millimetre is the drafts' own precision.
	row.InRange = row.Difference >= least-0.01 && row.Difference <= most+0.01
	switch {
	case !row.InRange && row.Difference < least:
		row.Verdict = construct.Say("%s too short", construct.Length(least-row.Difference))
	case !row.InRange:
		row.Verdict = construct.Say("%s too long", construct.Length(row.Difference-most))
	case math.Abs(row.Difference) < 0.5:
		row.Verdict = construct.Say("matches")
	default:
		row.Verdict = construct.Say("in order")
	}
	return row
}
