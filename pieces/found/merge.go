package found

import (
	"cmp"
	"slices"

	"github.com/paulmach/orb"

	"ellwand/pieces"
)

// shortStep, mm, is how long an edge may be that is no more than the step of a cutting line
// from one allowance to the next, on a sew line that goes straight on [source.OwnChoice].
const (
	shortStep  = 10
	mostJoined = 3 // of a piece [source.OwnChoice]
)

// joinSteps makes short edges, of which the sew line has nothing, a part of the edge before
// or after each, whichever leaves most edges with the sew line where it is drawn. Where none
// leaves a sew line nothing is changed.
func joinSteps(p *pieces.Piece, line orb.Ring) {
	short := shortEdges(p)
	best, most := *p, 0
	for before := range 1 << len(short) {
		joined, ok := joinedEdges(*p, short, before)
		if !ok {
			continue
		}
		if n := edgesOn(joined, line); n > most {
			best, most = joined, n
		}
	}
	if len(short) > 0 && most > 0 {
		*p = best
	}
}

// shortEdges are the shortest of a piece, by their numbers.
func shortEdges(p *pieces.Piece) []int {
	var out []int
	for i := range p.Edges {
		if e := &p.Edges[i]; !isFold(p, e) && e.Path.Length() <= shortStep {
			out = append(out, i)
		}
	}
	slices.SortStableFunc(out, func(a, b int) int {
		return cmp.Compare(p.Edges[a].Path.Length(), p.Edges[b].Path.Length())
	})
	out = out[:min(len(out), mostJoined)]
	slices.Sort(out)
	return out
}

// joinedEdges has each short edge in the one before it, where its bit says so, or else in the
// one after it; false where that is the fold, or lies beyond the point where the outline begins.
func joinedEdges(p pieces.Piece, short []int, before int) (pieces.Piece, bool) {
	p.Edges = slices.Clone(p.Edges)
	for k, i := range slices.Backward(short) {
		to, path := i+1, p.Edges[i].Path
		if before>>k&1 == 1 {
			to = i - 1
		}
		if to < 0 || to == len(p.Edges) || isFold(&p, &p.Edges[to]) {
			return p, false
		}
		if e := &p.Edges[to]; to > i {
			e.Path = slices.Concat(path, e.Path)
		} else {
			e.Path = slices.Concat(e.Path, path)
		}
		p.Edges = slices.Delete(p.Edges, i, i+1)
	}
	for i := range p.Edges {
		if e := &p.Edges[i]; !isFold(&p, e) {
			e.Name = numbered(i)
		}
	}
	return p, true
}

// edgesOn counts the edges whose seam line lies on a line; 0 where there is no seam line.
func edgesOn(p pieces.Piece, line orb.Ring) int {
	seam, err := p.AtSeam()
	n := 0
	for _, e := range p.Edges {
		if err == nil && e.Included > 0 && liesOn(seam, e.Name, line) {
			n++
		}
	}
	return n
}
