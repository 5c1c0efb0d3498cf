package svg

import (
	"cmp"
	"math"
	"slices"
	"strconv"
	"strings"

	"github.com/paulmach/orb"

	"ellwand/pieces"
	"ellwand/pieces/geometry"
	"ellwand/pieces/linework"
	"ellwand/pieces/marks"
	"ellwand/pieces/seams"
)

// IsOwn says that a drawing was written by Write.
func IsOwn(d linework.Drawing) bool { return d.About["pieces"] == Version }

// Read the pieces of a drawing that Write has written, and that somebody may have
// changed since: its lines count, and what stands beside them. A piece that is not whole
// is refused: by *linework.Fault, or by what a piece cannot have.
func Read(d linework.Drawing) ([]pieces.Piece, error) {
	r := reader{drawing: d, of: map[int]int{}, height: d.Pages[0].Box.Max[1]}
	for i, g := range d.Groups {
		if n, err := strconv.Atoi(g.About["piece"]); err == nil {
			r.of[i] = n
		}
	}
	var numbers []int
	for i, g := range d.Groups {
		if n, ok := r.of[i]; ok && g.About["at"] != "" && !slices.Contains(numbers, n) {
			numbers = append(numbers, n)
		}
	}
	var out []pieces.Piece
	for _, n := range numbers {
		p, err := r.piece(n)
		if err != nil {
			return nil, err
		}
		out = append(out, p)
	}
	return out, nil
}

// reader of a drawing.
type reader struct {
	drawing linework.Drawing
	of      map[int]int // the piece of a group
	height  float64     // of the page
}

// piece of a number.
func (r reader) piece(n int) (pieces.Piece, error) {
	var group linework.Group
	for i, g := range r.drawing.Groups {
		if r.of[i] == n && g.About["at"] != "" {
			group = g
			break
		}
	}
	about := group.About
	p := pieces.Piece{Name: group.Name, Size: about["size"], Cloth: about["cloth"], Pair: about["pair"] == "yes",
		Approximate: about["approximate"] == "yes", Fold: seams.Called(about["fold"])}
	shift, err := numbers(about["at"], 2)
	if err != nil {
		return p, r.fault(group, "data-at", about["at"])
	}
	if p.Cut, err = strconv.Atoi(about["cut"]); err != nil {
		return p, r.fault(group, "data-cut", about["cut"])
	}
	if p.Accuracy, err = length(about["accuracy"]); err != nil {
		return p, r.fault(group, "data-accuracy", about["accuracy"])
	}
	if kind := slices.Index(p.Kind.Words(), about["kind"]); kind > 0 {
		p.Kind = pieces.Kind(kind)
	}
	orders := map[seams.Name]int{}
	back := pieces.Move(-shift[0], shift[1]-r.height)
	for _, line := range r.drawing.Lines {
		if line.Group < 0 || r.of[line.Group] != n {
			continue
		}
		line.Path = rounded(line.Path.Map(back))
		if err := add(&p, line, orders); err != nil {
			err.Piece = p.Name
			return p, err
		}
	}
	slices.SortStableFunc(p.Edges, func(a, b pieces.Edge) int { return cmp.Compare(orders[a.Name], orders[b.Name]) })
	joinEdges(p.Edges)
	return p, p.Check()
}

// rounded points, as they were written: the place on the page has moved them by the
// least of a number.
func rounded(path pieces.Path) pieces.Path {
	to := func(p orb.Point) orb.Point { return orb.Point{math.Round(p[0]*1e4) / 1e4, math.Round(p[1]*1e4) / 1e4} }
	out := make(pieces.Path, len(path))
	for i, c := range path {
		switch c := c.(type) {
		case pieces.Line:
			out[i] = pieces.Line{From: to(c.From), To: to(c.To)}
		case pieces.Bezier:
			out[i] = pieces.Bezier{P0: to(c.P0), P1: to(c.P1), P2: to(c.P2), P3: to(c.P3)}
		case pieces.Arc:
			c.Centre = to(c.Centre)
			out[i] = c
			if geometry.Distance(out[i].Start(), path[i].Start()) > 1e-9 { // its centre is no round number
				out[i] = path[i]
			}
		default:
			out[i] = c
		}
	}
	return out
}

func (r reader) fault(g linework.Group, key, value string) error {
	return &linework.Fault{Of: linework.NotOwn, Piece: g.Name, Key: key, Text: value}
}

// add what a line is to the piece.
func add(p *pieces.Piece, line linework.Line, orders map[seams.Name]int) *linework.Fault {
	about := line.About
	switch {
	case about["derived"] != "":
		return nil
	case about["edge"] != "":
		return addEdge(p, line, orders)
	case about["notch"] != "":
		return addNotch(p, about)
	case about["dart"] != "":
		return addDart(p, line)
	case about["mark"] != "":
		return addMark(p, line)
	case about["grain"] != "":
		p.Grain.From, p.Grain.To = line.Ends()
		if lie := slices.Index(p.Grain.Lie.Words(), about["grain"]); lie > 0 {
			p.Grain.Lie = pieces.GrainLie(lie)
		}
	}
	return nil
}

func addEdge(p *pieces.Piece, line linework.Line, orders map[seams.Name]int) *linework.Fault {
	e := pieces.Edge{Name: seams.Called(line.About["edge"]), Path: line.Path, Unknown: line.About["unknown"] == "yes",
		Hem: line.About["hem"] == "yes"}
	var err error
	if e.Allowance, err = length(line.About["allowance"]); err == nil {
		e.Included, err = length(line.About["included"])
	}
	if err != nil {
		return &linework.Fault{Of: linework.AllowanceAmiss, Text: e.Name.String()}
	}
	orders[e.Name], _ = strconv.Atoi(line.About["order"])
	p.Edges = append(p.Edges, e)
	return nil
}

// joinEdges lets every edge begin exactly where the one before it ends, where a drawing
// program has rounded.
func joinEdges(edges []pieces.Edge) {
	const rounded = 0.01 // mm [source.OwnChoice]
	for i := range edges {
		to := edges[(i+1)%len(edges)].Path.Start()
		path := slices.Clone(edges[i].Path)
		last := len(path) - 1
		if geometry.Distance(path.End(), to) > rounded {
			continue
		}
		switch c := path[last].(type) {
		case pieces.Line:
			c.To = to
			path[last] = c
		case pieces.Bezier:
			c.P3 = to
			path[last] = c
		}
		edges[i].Path = path
	}
}

func addNotch(p *pieces.Piece, about map[string]string) *linework.Fault {
	n := pieces.Notch{Edge: seams.Called(about["notch"]), Count: 1}
	for _, had := range p.Notches { // a notch of two strokes is drawn as two lines
		if had.Edge == n.Edge && number(had.At) == about["at"] {
			return nil
		}
	}
	var err error
	if n.At, err = finite(about["at"]); err != nil {
		return &linework.Fault{Of: linework.NotchAmiss, Text: n.Edge.String()}
	}
	if about["strokes"] != "" {
		if n.Count, err = strconv.Atoi(about["strokes"]); err != nil {
			return &linework.Fault{Of: linework.StrokesAmiss, Text: n.Edge.String()}
		}
	}
	if about["match"] != "" {
		n.Match = marks.Called(about["match"])
	}
	p.Notches = append(p.Notches, n)
	return nil
}

func addDart(p *pieces.Piece, line linework.Line) *linework.Fault {
	d := pieces.Dart{Name: seams.Called(line.About["dart"]), Mouth: seams.Called(line.About["mouth"])}
	points := []orb.Point{line.Path.Start()}
	for _, c := range line.Path {
		points = append(points, c.End())
	}
	least := 3
	if d.Mouth == seams.None {
		least = 4
	}
	if len(points) < least {
		return &linework.Fault{Of: linework.DartCornersFew, Text: d.Name.String()}
	}
	d.Start, d.Apex, d.End = points[0], points[1], points[2]
	if d.Mouth == seams.None {
		d.OtherApex = points[3]
	}
	p.Darts = append(p.Darts, d)
	return nil
}

func addMark(p *pieces.Piece, line linework.Line) *linework.Fault {
	m := pieces.Mark{Name: marks.Called(line.About["mark"]), Path: line.Path}
	if at := line.About["point"]; at != "" {
		known := func(o pieces.Mark) bool { return o.Name == m.Name && o.Path == nil && pair(o.At) == at }
		if slices.ContainsFunc(p.Marks, known) {
			return nil // the other line of its cross
		}
		point, err := numbers(at, 2)
		if err != nil {
			return &linework.Fault{Of: linework.MarkPlacedAmiss, Text: m.Name.String()}
		}
		m.Path, m.At = nil, orb.Point{point[0], point[1]}
	}
	p.Marks = append(p.Marks, m)
	return nil
}

// length that may not be given: 0 then.
func length(text string) (float64, error) {
	if text == "" {
		return 0, nil
	}
	return finite(text)
}

// finite number of a text.
func finite(text string) (float64, error) {
	x, err := strconv.ParseFloat(text, 64)
	if err == nil && (math.IsNaN(x) || math.IsInf(x, 0)) {
		err = strconv.ErrRange
	}
	return x, err
}

func numbers(text string, many int) ([]float64, error) {
	words := strings.Fields(text)
	if len(words) != many {
		return nil, strconv.ErrSyntax
	}
	out := make([]float64, many)
	for i, word := range words {
		x, err := finite(word)
		if err != nil {
			return nil, err
		}
		out[i] = x
	}
	return out, nil
}
