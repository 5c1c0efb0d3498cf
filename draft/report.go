package draft

import "ellwand/draft/construct"

// Report is the truing report: a row for every pair of seams that are sewn
// together, and for every seam that has to fit the body.
type Report struct{ Rows []Row }

// Row compares two lengths.
type Row struct {
	Seam    string // "shoulder"
	Of      string // "back shoulder"
	Against string // "front shoulder"
	// OfLength and AgainstLength in mm; Difference is the first less the
	// second.
	OfLength, AgainstLength, Difference float64
	// Least and Most are the normal range of Difference; Most is 10 m where
	// more does no harm.
	Least, Most float64
	// Normal says what is normal and where that is from: "0.5 to 1 cm longer,
	// eased in [source.CommonPractice]".
	Normal construct.Sentence
	// InRange is false when the difference is outside the normal range.
	InRange bool
	// Verdict is a word or two for people: "matches", "2.1 cm too short".
	Verdict construct.Sentence
}

// InRange says whether every row is.
func (r Report) InRange() bool {
	for _, row := range r.Rows {
		if !row.InRange {
			return false
		}
	}
	return true
}
