package tidy

import (
	"regexp"
	"slices"

	"ellwand/pieces/found"
)

// cut is how a pattern says how many are cut: cut 2, Cut: 4, cut 2 on fold.
var (
	cut   = regexp.MustCompile(`(?i)\bcut:? *([1-9][0-9]?)\b`)
	folds = regexp.MustCompile(`(?i)\b(on|to|along) (the )?fold\b`)
	pairs = regexp.MustCompile(`(?i)\b(pairs?|mirrored)\b`)
)

// count gives pieces the number that is written in them, where one alone is, and lays
// those on the fold of which that is written and whose sew line is open there.
func count(all []found.Piece) {
	for i := range all {
		p := &all[i]
		p.SaysFold = slices.ContainsFunc(p.Texts, func(text found.Text) bool { return folds.MatchString(text.Words) })
		if p.SaysFold && p.Mirror == nil {
			p.Mirror = p.OpenSide
		}
		if p.Count() > 0 {
			continue
		}
		n, pair, several := 0, false, false
		for _, text := range p.Texts {
			m := cut.FindStringSubmatch(text.Words)
			if m == nil {
				continue
			}
			several = several || n > 0 && n != number(m[1])
			n, pair = number(m[1]), pair || pairs.MatchString(text.Words)
		}
		switch {
		case several:
		case pair && n%2 == 0:
			p.AsDrawn, p.Mirrored = n/2, n/2
		default:
			p.Cut = n
		}
	}
}
