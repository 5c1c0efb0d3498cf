package view

import (
	"github.com/paulmach/orb"

	"ellwand/cmd/ellwand/app"
	"ellwand/cmd/ellwand/job"
	"ellwand/cmd/ellwand/page/desk"
	"ellwand/cmd/ellwand/words"
	"ellwand/fabric/lay"
)

// Layout is a lay of a cloth as it is drawn, in mm: x along the warp from the cut end, y
// across from the edge nearest to the cutter.
type Layout struct {
	Revision int    `json:"revision"`
	Cloth    string `json:"cloth"`
	Width    string `json:"width"`
	Lay      string `json:"lay"`
	Plies    int    `json:"plies"`
	// WidthMM is the usable width of the lay.
	WidthMM  float64 `json:"width_mm"`
	Edges    Sides   `json:"edges"`
	LengthMM float64 `json:"length_mm"`
	Buy      string  `json:"buy"`
	Amount   string  `json:"amount"`
	// Added is what lies between what is laid and what is bought.
	Added     []Added  `json:"added"`
	Bound     string   `json:"bound"`
	BoundMM   float64  `json:"bound_mm"`
	Sentence  string   `json:"sentence"`
	Searching bool     `json:"searching"`
	Verified  bool     `json:"verified"`
	Mark      string   `json:"mark,omitempty"`
	Parts     []Part   `json:"parts"`
	Flaws     []Flaw   `json:"flaws"`
	Repeat    *Repeat  `json:"repeat"`
	Nap       string   `json:"nap"`
	Notes     []string `json:"notes"`
	Pieces    []Laid   `json:"pieces"`
}

// Added is a part of what is bought beside the lay, by the word of the commands.
type Added struct {
	Part     string  `json:"part"`
	LengthMM float64 `json:"length_mm"`
}

// Sides of a lay: selvedge or fold.
type Sides struct {
	Near string `json:"near"`
	Far  string `json:"far"`
}

// Part of a lay with its plies.
type Part struct {
	X     float64 `json:"x"`
	End   float64 `json:"end"`
	Plies int     `json:"plies"`
}

// Flaw is a place that no piece may touch.
type Flaw struct {
	Name    string  `json:"name"`
	Outline []Point `json:"outline"`
}

// Repeat of the print: its lines begin at x and y.
type Repeat struct {
	AlongMM  float64 `json:"along_mm"`
	AcrossMM float64 `json:"across_mm"`
	XMM      float64 `json:"x_mm"`
	YMM      float64 `json:"y_mm"`
}

// Laid is a piece in its place: its outline, turned and mirrored as it lies, is moved by At.
type Laid struct {
	ID       string    `json:"id"`
	Name     string    `json:"name"`
	Garment  string    `json:"garment"`
	Size     string    `json:"size"`
	Copy     int       `json:"copy"`
	Mirrored bool      `json:"mirrored"`
	Turn     float64   `json:"turn"`
	Turns    []float64 `json:"turns"`
	At       Point     `json:"at"`
	Outline  []Point   `json:"outline"`
	Grain    [2]Point  `json:"grain"`
	OnFold   bool      `json:"on_fold"`
	// Locked says that it stays where it lies, ByHand that a hand laid it there.
	Locked bool `json:"locked"`
	ByHand bool `json:"by_hand"`
}

// ID of a laid piece.
func ID(l lay.Laid) string {
	return desk.PieceID{Garment: l.Garment, Size: l.Size, Name: l.Name, Copy: l.Copy}.String()
}

// LayoutOf a plan that was found for a job. Of one that is not proven the overlaps are
// shown, and it cannot be printed.
func LayoutOf(work *job.Work, p app.Planned, revision int) Layout {
	out := LaidOf(work, p.Plan)
	out.Revision, out.Mark = revision, p.Mark
	out.Buy = words.BuyInStore(p.Cloth, p.Plan)
	out.Amount, out.Added = out.Buy, addedTo(work, p)
	out.Sentence = out.Buy
	if least := words.LeastInStore(work, p.Cloth, p.Least()); p.Least() > 0 && least != "" {
		out.Sentence += "; no way of laying takes less than " + least
	}
	if p.Ended.Early {
		out.Sentence += "; the search was ended early, so that less may do"
	}
	out.Notes = append(out.Notes, words.Notes(p.Plan)...)
	return out
}

// least that is worth a word beside an amount, mm, as the commands have it [source.OwnChoice].
const least = 0.5

// addedTo what a lay takes until it is what is bought; none while that is not known.
func addedTo(work *job.Work, p app.Planned) []Added {
	out := []Added{}
	reckoned, known := p.Reckoned()
	if !known {
		return out
	}
	for _, part := range words.Reckoning(work, reckoned)[1:] { // the first is the lay itself
		if part.Length >= least {
			out = append(out, Added{part.Part.String(), tidy(part.Length)})
		}
	}
	return out
}

// LaidOf a plan, without its amount.
func LaidOf(work *job.Work, p lay.Plan) Layout {
	out := Layout{
		Cloth: p.Cloth.Name, Width: Address(p.Cloth.Width), Lay: p.Lay.String(), Plies: p.Plies, WidthMM: tidy(p.Width),
		Edges: sidesOf(p.Lay), LengthMM: tidy(p.Length), Bound: words.LeastInStore(work, p.Cloth, p.Least()),
		BoundMM:  tidy(p.Bound),
		Verified: true, Parts: []Part{}, Flaws: []Flaw{}, Nap: p.Cloth.Nap.String(), Pieces: []Laid{},
	}
	for _, part := range p.Beds {
		out.Parts = append(out.Parts, Part{tidy(part.X), tidy(part.X + part.Length), part.Plies})
	}
	for _, zone := range p.Zones {
		out.Flaws = append(out.Flaws, Flaw{Outline: points(zone)})
	}
	if r := p.Cloth.Repeat; !r.IsPlain() {
		out.Repeat = &Repeat{AlongMM: r.Along, AcrossMM: r.Across, YMM: r.CentreLine}
	}
	for _, l := range p.Pieces {
		out.Pieces = append(out.Pieces, laidOf(l))
	}
	return out
}

// sidesOf a lay: near the cutter, and away from her.
func sidesOf(kind lay.Kind) Sides {
	const selvedge, fold = "selvedge", "fold"
	switch kind {
	case lay.FoldedAlong, lay.SelvedgeIn, lay.InStretches:
		return Sides{fold, selvedge}
	case lay.BothSelvedgesIn:
		return Sides{fold, fold}
	}
	return Sides{selvedge, selvedge}
}

func laidOf(l lay.Laid) Laid {
	out := Laid{
		ID: ID(l), Name: l.Name, Garment: l.Garment, Size: l.Size, Copy: l.Copy, Mirrored: l.Mirrored, Turn: tidy(l.Turn),
		Turns: []float64{}, At: Point{l.X, l.Y}, OnFold: l.OnFold, Locked: l.ByHand, ByHand: l.ByHand,
	}
	for _, turning := range l.Turnings {
		if turning.Mirrored == l.Mirrored {
			out.Turns = append(out.Turns, tidy(turning.Degrees))
		}
	}
	from := func(p orb.Point) Point { return Point{tidy(p[0] - l.X), tidy(p[1] - l.Y)} }
	for _, p := range l.Outline {
		out.Outline = append(out.Outline, from(p))
	}
	out.Grain = [2]Point{from(l.Grain[0]), from(l.Grain[1])}
	return out
}
