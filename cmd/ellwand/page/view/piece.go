package view

import (
	"math"
	"slices"
	"strings"

	"github.com/paulmach/orb"

	"ellwand/cmd/ellwand/job"
	"ellwand/draft"
	"ellwand/pieces"
	"ellwand/pieces/found"
	"ellwand/pieces/seams"
)

// Piece is a piece as it is drawn, in mm, y up.
type Piece struct {
	Name    string `json:"name"`
	Garment string `json:"garment"`
	// Index of the garment in the file.
	Index int    `json:"index"`
	Cloth string `json:"cloth"`
	Kind  string `json:"kind"`
	Cut   int    `json:"cut"`
	// Of is the name of a piece of a pattern in its file; empty of others. Folds are the sides
	// of such a piece that may lie on the fold, and Folded the one that does.
	Of     string   `json:"of,omitempty"`
	Folds  []string `json:"folds,omitempty"`
	Folded string   `json:"folded,omitempty"`
	// OneHanded says that all are cut the same way up though they have a right and a left;
	// Unknown that nobody said what seam allowance its outline has.
	OneHanded bool   `json:"one_handed"`
	Unknown   bool   `json:"unknown"`
	Pair      bool   `json:"pair"`
	Fold      string `json:"fold"`
	// Cutting is the cutting outline, Seam the line that the piece is drawn by.
	Cutting []Point   `json:"cutting"`
	Seam    []Point   `json:"seam"`
	Edges   []Edge    `json:"edges"`
	Grain   [2]Point  `json:"grain"`
	Notches []Notch   `json:"notches"`
	Lines   [][]Point `json:"lines"`
	Points  []Point   `json:"points"`
}

// Point in mm, to a hundredth.
type Point [2]float64

// Edge is a stretch of the line that a piece is drawn by.
type Edge struct {
	Name        string  `json:"name"`
	Line        []Point `json:"line"`
	AllowanceMM float64 `json:"allowance_mm"`
	Allowance   string  `json:"allowance"`
	Length      string  `json:"length"`
	// Path at which its allowance is set; none where that cannot be.
	Path []any `json:"path,omitempty"`
	Fold bool  `json:"fold"`
	Hem  bool  `json:"hem"`
	// Cutting says that the line is a cutting line, which came from elsewhere.
	Cutting bool `json:"cutting"`

	seam string
}

// Notch from the seam line outward.
type Notch struct {
	At     Point `json:"at"`
	To     Point `json:"to"`
	Double bool  `json:"double"`
}

// drawn is how finely curves are flattened for a drawing, mm; a screen shows no more
// [source.OwnChoice].
const drawn = 0.3

// piecesOf a job, whose file has garments of these names in this order.
func piecesOf(work *job.Work, garments map[string]int) ([]Piece, error) {
	out := []Piece{}
	for _, made := range work.Garments {
		for _, piece := range made.Pieces {
			one, err := pieceOf(work, piece, garments[made.Kind], len(made.Sheets) > 0)
			if err != nil {
				return nil, err
			}
			one.Garment = made.Name
			if one.Of = made.FromPattern[piece.Name]; one.Of != "" {
				one.foldsOf(piece)
			}
			out = append(out, one)
		}
	}
	return out, nil
}

func pieceOf(work *job.Work, p pieces.Piece, garment int, drafted bool) (Piece, error) {
	cutting, err := p.CuttingOutline(drawn)
	if err != nil {
		return Piece{}, err
	}
	out := Piece{
		Name: p.Name, Index: garment, Cloth: p.Cloth, Kind: p.Kind.String(), Cut: p.Cut, Pair: p.Pair, Fold: p.Fold.String(),
		Cutting: points(cutting), Seam: points(p.Boundary(drawn)), Grain: [2]Point{point(p.Grain.From), point(p.Grain.To)},
		Edges: []Edge{}, Notches: []Notch{}, Lines: [][]Point{}, Points: []Point{},
	}
	out.OneHanded = slices.ContainsFunc(work.Cloths, func(g job.Goods) bool {
		return g.Cloth.Name == p.Cloth && g.Cloth.LacksLeft(p)
	})
	for _, e := range p.Edges {
		out.Edges = append(out.Edges, edgeOf(work, p, e, garment, drafted))
		out.Unknown = out.Unknown || e.Unknown
	}
	for _, n := range p.Notches {
		if e, found := p.Edge(n.Edge); found {
			out.Notches = append(out.Notches, notchOf(e, n))
		}
	}
	for _, d := range p.Darts {
		line := []orb.Point{d.Start, d.Apex, d.End}
		if d.Mouth == seams.None {
			line = append(line, d.OtherApex, d.Start)
		}
		out.Lines = append(out.Lines, points(line))
	}
	for _, m := range p.Marks {
		if m.Path == nil {
			out.Points = append(out.Points, point(m.At))
			continue
		}
		out.Lines = append(out.Lines, points(m.Path.Flatten(drawn)))
	}
	return out, nil
}

// foldsOf a piece of a pattern.
func (p *Piece) foldsOf(piece pieces.Piece) {
	for _, side := range found.SidesAlongWarp(piece) {
		p.Folds = append(p.Folds, side.String())
	}
	p.Folded = found.FoldedSide(piece).String()
}

func edgeOf(work *job.Work, p pieces.Piece, e pieces.Edge, garment int, drafted bool) Edge {
	out := Edge{
		Name: e.Name.String(), Line: points(e.Path.Flatten(drawn)), AllowanceMM: tidy(e.Allowance),
		Allowance: work.Format(e.Allowance), Length: work.Format(e.Path.Length()),
		Fold: p.Fold != seams.None && e.Name == p.Fold, Cutting: e.Unknown || e.Included > 0, Hem: e.Hem,
		seam: e.Name.Seam().String(),
	}
	if key, known := allowanceKey(e.Name); known && drafted && !out.Fold {
		out.Path = []any{"garments", garment, "allowances", key}
	}
	return out
}

// allowanceKey is the key by which the allowance of an edge is given.
func allowanceKey(edge seams.Name) (string, bool) {
	for _, name := range draft.AllowanceNames() {
		if name == edge.Role() {
			return strings.ReplaceAll(name.String(), " ", "_"), true
		}
	}
	return "", false
}

// notchLength is how far a notch is drawn where there is no allowance, mm
// [source.OwnChoice].
const notchLength = 5

func notchOf(e pieces.Edge, n pieces.Notch) Notch {
	at, along := e.Path.At(n.At), e.Path.Tangent(n.At)
	far := e.Allowance
	if far == 0 {
		far = -notchLength
	}
	outward := orb.Point{at[0] + far*along[1], at[1] - far*along[0]}
	return Notch{At: point(at), To: point(outward), Double: n.Count > 1}
}

func points(all []orb.Point) []Point {
	out := make([]Point, len(all))
	for i, p := range all {
		out[i] = point(p)
	}
	return out
}

func point(p orb.Point) Point { return Point{tidy(p[0]), tidy(p[1])} }

// tidy rounds to a hundredth of a millimetre.
func tidy(x float64) float64 { return math.Round(x*100)/100 + 0 }
