package job

import (
	"slices"

	"ellwand/cmd/ellwand/strict"
	"ellwand/draft/part"
	"ellwand/pieces"
)

// usualDepths of parts, finished, mm [source.CommonPractice].
var usualDepths = map[part.Kind]usual{
	part.Collar: {25, 140}, part.ShirtCollar: {25, 110}, part.FlatCollar: {25, 180}, part.MandarinCollar: {20, 80},
	part.Cuff: {20, 150}, part.ButtonedCuff: {30, 150}, part.Waistband: {15, 110}, part.ShapedWaistband: {20, 140},
	part.NeckFacing: {25, 120}, part.ArmholeFacing: {25, 100}, part.Belt: {10, 130}, part.BiasStrip: {10, 150},
}

// fitted are the parts that are as long as the seam that they join.
var fitted = []part.Kind{part.Collar, part.MandarinCollar, part.Cuff, part.ButtonedCuff, part.Waistband}

// How long a part that is gathered or eased to its seam may be against it: the seam may
// be fuller than the part, or the part overlap [source.OwnChoice].
const (
	leastOfSeam = 0.85
	mostOfSeam  = 1.5
)

// parts asks about depths that are unusual, and about parts that hardly fit the seam
// that they join: drafted ones whose length is given, and rectangles of the maker's own
// that are called as a part is.
func (q *questioner) parts() {
	for i, garment := range q.file.Garments {
		path := strict.Top("garments").Entry(i)
		for k, p := range garment.Parts {
			at, kind := path.Key("parts").Entry(k), kindCalled(string(p.Kind))
			if depth, known := usualDepths[kind]; known && p.Depth != "" && !depth.holds(q.length(p.Depth)) {
				q.ask(at.Key("depth"), "a %s %s deep is unusual; %s", "%s, %s hoch: das ist ungewöhnlich; %s",
					kind, q.work.Format(q.length(p.Depth)),
					orMeant(q.meant(p.Depth, depth)))
			}
			if p.Length != "" && slices.Contains(fitted, kind) {
				q.fit(at.Key("length"), i, kind, q.length(p.Length), p.Length)
			}
		}
		for k, piece := range garment.Pieces {
			kind := kindCalled(string(piece.Name))
			if !slices.Contains(fitted, kind) || piece.Width == "" || piece.Height == "" {
				continue
			}
			at, long := path.Key("pieces").Entry(k), piece.Height
			if q.length(piece.Width) >= q.length(piece.Height) {
				at, long = at.Key("width"), piece.Width
			} else {
				at = at.Key("height")
			}
			if made, found := q.made(q.work, i, string(piece.Name)); found {
				q.fit(at, i, kind, longSide(made), long)
			}
		}
	}
}

// kindCalled is the kind of part of that name; empty where there is none.
func kindCalled(name string) part.Kind {
	for _, kind := range part.Kinds() {
		if strict.Plain(name) == strict.Plain(string(kind)) {
			return kind
		}
	}
	return ""
}

// fit asks about a part of a garment that is much longer or shorter than one that is
// drafted to the seam that it joins. Where none can be drafted nothing is asked.
func (q *questioner) fit(path Path, garment int, kind part.Kind, length float64, text Measure) {
	const probe = "as it is drafted"
	file := *q.file
	file.Garments = slices.Clone(file.Garments)
	g := &file.Garments[garment]
	if g.Bodice == nil && g.Skirt == nil && g.Trousers == nil {
		return
	}
	g.Parts = append(slices.Clone(g.Parts), Part{Kind: Choice[part.Kind](kind), Name: probe})
	drafted, err := file.resolve(shortening{})
	if err != nil {
		return
	}
	fits, found := q.made(drafted, garment, probe)
	if !found {
		return
	}
	seam := longSide(fits)
	if ratio := length / seam; ratio >= leastOfSeam && ratio <= mostOfSeam {
		return
	}
	q.ask(path, "a %s %s long joins a seam that takes one of %s; %s",
		"%s, %s lang, kommt an eine Naht, die %s braucht; %s",
		kind, q.work.Format(length), q.work.Format(seam),
		orMeant(q.meant(text, about(seam*length/max(q.length(text), 1)))))
}

// made finds a piece of a garment of the file by its name.
func (q *questioner) made(work *Work, garment int, name string) (pieces.Piece, bool) {
	for _, made := range work.Garments {
		if made.Kind != string(q.file.Garments[garment].Name) {
			continue
		}
		for _, piece := range made.Pieces {
			if piece.Name == name {
				return piece, true
			}
		}
	}
	return pieces.Piece{}, false
}

// longSide of a piece as it is sewn, opened out.
func longSide(piece pieces.Piece) float64 {
	box := piece.Unfolded().Boundary(1).Bound()
	return max(box.Max[0]-box.Min[0], box.Max[1]-box.Min[1])
}
