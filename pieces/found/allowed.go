package found

import (
	"ellwand/pieces"
	"ellwand/pieces/seams"
)

// allow gives the edges the allowance that was said.
func allow(p *pieces.Piece, a Allowance) {
	for i := range p.Edges {
		e := &p.Edges[i]
		e.Allowance, e.Included, e.Unknown = 0, 0, false
		switch {
		case e.Name == p.Fold && p.Fold != seams.None:
		case a.How == AllowanceAdded:
			e.Allowance = a.Width
		case a.How == AllowanceIncluded && a.Width > 0:
			e.Included = a.Width
		default:
			e.Unknown = true
		}
	}
}

// allowBySew gives every edge what lies between it and the sew line, where that is of
// one width; it counts the edges where it is not, whose allowance is unknown.
func allowBySew(p *pieces.Piece, sew pieces.Path) (uneven int) {
	line := ring(sew)
	for i := range p.Edges {
		e := &p.Edges[i]
		e.Allowance, e.Included, e.Unknown = 0, 0, false
		if isFold(p, e) {
			continue
		}
		width, ok := widthTo(e.Path, line)
		switch {
		case !ok:
			e.Unknown = true
		case width > same:
			e.Included = width
		}
	}
	allowSteps(p, line)
	seam, err := p.AtSeam()
	if err != nil {
		joinSteps(p, line)
		seam, err = p.AtSeam()
	}
	for i := range p.Edges {
		e := &p.Edges[i]
		if e.Included > 0 && (err != nil || !liesOn(seam, e.Name, line)) {
			e.Included, e.Unknown = 0, true
		}
		if e.Unknown {
			uneven++
		}
	}
	return uneven
}
