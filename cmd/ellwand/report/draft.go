package report

import (
	"strings"

	"ellwand/cmd/ellwand/job"
	"ellwand/draft"
	"ellwand/pieces"
	"ellwand/pieces/language"
	"ellwand/pieces/measure"
)

// Draft is what draft prints as JSON.
type Draft struct {
	Job      string             `json:"job"`
	Client   string             `json:"client,omitempty"`
	Body     map[string]float64 `json:"body_mm"`
	Derived  map[string]string  `json:"derived"` // measurements not given, and their rules
	Garments []Garment          `json:"garments"`
	Notes    []string           `json:"notes"`
	Files    []string           `json:"files"`
}

// Garment is one kind of garment as drafted.
type Garment struct {
	Name     string             `json:"name"`
	Quantity int                `json:"quantity"`
	Pieces   []Piece            `json:"pieces"`
	Figures  map[string]float64 `json:"figures_mm"`
	Truing   []Truing           `json:"truing"`
}

// Piece has the size of the cutting outline over all; of a piece on the
// fold, that of the half.
type Piece struct {
	Name     string  `json:"name"`
	Cloth    string  `json:"cloth"`
	Kind     string  `json:"kind"`
	Cut      int     `json:"cut"`
	Pair     bool    `json:"pair"`
	Fold     string  `json:"fold,omitempty"`
	WidthMM  float64 `json:"width_mm"`
	HeightMM float64 `json:"height_mm"`
}

// How it is cut: "on the fold", "pair" or empty.
func (p Piece) How() string {
	switch {
	case p.Fold != "":
		return "on the fold"
	case p.Pair:
		return "pair"
	}
	return ""
}

// Truing compares two seams that are sewn together.
type Truing struct {
	Seam         string  `json:"seam"`
	Of           string  `json:"of"`
	Against      string  `json:"against"`
	OfMM         float64 `json:"of_mm"`
	AgainstMM    float64 `json:"against_mm"`
	DifferenceMM float64 `json:"difference_mm"`
	LeastMM      float64 `json:"least_mm"`
	MostMM       float64 `json:"most_mm"`
	Normal       string  `json:"normal"`
	Sound        bool    `json:"sound"`
	Verdict      string  `json:"verdict"`
}

// drawn is how finely an outline is flattened to measure it, mm.
const drawn = 0.05

// DraftOf a job. An error is the program's own fault.
func DraftOf(work *job.Work) (Draft, error) {
	out := Draft{Job: work.Name, Client: work.Client, Body: map[string]float64{}, Derived: map[string]string{},
		Garments: []Garment{}, Notes: language.Texts(work.Notes, language.English)}
	for name, value := range work.Body {
		out.Body[strings.ReplaceAll(string(name), " ", "_")] = tidy(value)
	}
	for name, rule := range work.Derived {
		out.Derived[strings.ReplaceAll(string(name), " ", "_")] = rule.In(work.Unit)
	}
	for _, made := range work.Garments {
		report, err := garmentOf(made, work.Unit)
		if err != nil {
			return out, err
		}
		out.Garments = append(out.Garments, report)
	}
	return out, nil
}

func garmentOf(made job.Made, unit measure.Unit) (Garment, error) {
	out := Garment{Name: made.Name, Quantity: made.Quantity, Pieces: []Piece{}, Figures: map[string]float64{},
		Truing: []Truing{}}
	for _, piece := range made.Pieces {
		report, err := pieceOf(piece)
		if err != nil {
			return out, err
		}
		out.Pieces = append(out.Pieces, report)
	}
	for _, figure := range made.Figures {
		out.Figures[strings.ReplaceAll(figure.Name, " ", "_")] = tidy(figure.Value)
	}
	out.Truing = append(out.Truing, TruingOf(made.Truing, unit)...)
	return out, nil
}

// TruingOf a garment, in the units of a job.
func TruingOf(all draft.Report, unit measure.Unit) []Truing {
	var out []Truing
	for _, r := range all.Rows {
		out = append(out, Truing{
			Seam: r.Seam, Of: r.Of, Against: r.Against, OfMM: tidy(r.OfLength), AgainstMM: tidy(r.AgainstLength),
			DifferenceMM: tidy(r.Difference), LeastMM: tidy(r.Least), MostMM: tidy(r.Most),
			Normal: r.Normal.In(unit), Sound: r.InRange, Verdict: r.Verdict.In(unit),
		})
	}
	return out
}

func pieceOf(piece pieces.Piece) (Piece, error) {
	outline, err := piece.CuttingOutline(drawn)
	if err != nil {
		return Piece{}, err
	}
	box := outline.Bound()
	return Piece{
		Name: piece.Name, Cloth: piece.Cloth, Kind: piece.Kind.String(), Cut: piece.Cut, Pair: piece.Pair,
		Fold:    piece.Fold.String(),
		WidthMM: tidy(box.Max[0] - box.Min[0]), HeightMM: tidy(box.Max[1] - box.Min[1]),
	}, nil
}
