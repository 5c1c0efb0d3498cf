package report

import (
	"ellwand/cmd/ellwand/app"
	"ellwand/cmd/ellwand/job"
	"ellwand/cmd/ellwand/words/reason"
	"ellwand/fabric/remnant"
	"ellwand/fabric/words"
)

// Remnant is what remnant prints as JSON. Answer is "yes", "cannot be"
// or "not found".
type Remnant struct {
	Job    string         `json:"job"`
	Cloths []RemnantCloth `json:"cloths"`
}

// RemnantCloth is the answer about one piece of cloth.
type RemnantCloth struct {
	Name     string  `json:"name"`
	WidthMM  float64 `json:"width_mm"`
	LengthMM float64 `json:"length_mm"`
	UsableMM float64 `json:"usable_length_mm"`
	Nap      string  `json:"nap"`
	// Remnants are where each of several lies in the row that the layout shows.
	Remnants []Row  `json:"remnants,omitempty"`
	Answer   string `json:"answer"`
	Ended
	// FoundEarlier says that an earlier search, with another seed or effort, found the lay.
	FoundEarlier bool    `json:"found_earlier,omitempty"`
	Lay          string  `json:"lay,omitempty"`
	TakenMM      float64 `json:"taken_mm,omitempty"`
	// Range is between which lengths of the cloth it may prove to take, with the cut ends;
	// left out where it is not enough, or of several remnants.
	Range *Range     `json:"range,omitempty"`
	Left  *Spare     `json:"left,omitempty"`
	Proof string     `json:"proof,omitempty"`
	Over  []Overhang `json:"over,omitempty"`
	Ways  []Way      `json:"changes"`
}

// Row is where one of several remnants lies, along.
type Row struct {
	Name   string  `json:"name"`
	FromMM float64 `json:"from_mm"`
	ToMM   float64 `json:"to_mm"`
}

// Spare is what is left over.
type Spare struct {
	CleanEndMM float64 `json:"clean_end_mm"`
	XMM        float64 `json:"rectangle_x_mm"`
	YMM        float64 `json:"rectangle_y_mm"`
	LengthMM   float64 `json:"rectangle_length_mm"`
	WidthMM    float64 `json:"rectangle_width_mm"`
}

// Overhang is a piece that sticks out over the end.
type Overhang struct {
	Piece   string  `json:"piece"`
	Garment string  `json:"garment"`
	ByMM    float64 `json:"by_mm"`
}

// Way is a change that makes it fit.
type Way struct {
	Kind    string  `json:"kind"`
	Text    string  `json:"text"`
	ByMM    float64 `json:"by_mm,omitempty"`
	Lay     string  `json:"lay"`
	TakenMM float64 `json:"taken_mm"`
}

// RemnantOf the answers about the cloths of a job.
func RemnantOf(work *job.Work, all []app.RemnantAnswer) Remnant {
	out := Remnant{Job: work.Name, Cloths: []RemnantCloth{}}
	for _, a := range all {
		out.Cloths = append(out.Cloths, remnantClothOf(work, a))
	}
	return out
}

func remnantClothOf(work *job.Work, a app.RemnantAnswer) RemnantCloth {
	out := RemnantCloth{
		Name: a.Cloth.Name, WidthMM: tidy(a.Cloth.Width), LengthMM: tidy(a.Length), UsableMM: tidy(a.Fit.Usable),
		Nap: a.Cloth.Nap.String(), Answer: a.Fit.Answer.String(), Proof: words.Reasons(a.Cloth, a.Fit.Proof), Ways: []Way{},
	}
	out.Ended, out.FoundEarlier = endedOf(a.Ended), a.Fit.Kept
	for _, place := range a.Row {
		out.Remnants = append(out.Remnants, Row{place.Name, tidy(place.From), tidy(place.To)})
	}
	if len(a.Fit.Plan.Pieces) > 0 {
		out.Lay, out.TakenMM = a.Fit.Plan.Lay.String(), tidy(a.Fit.Plan.Taken)
	}
	if a.Range.High > 0 {
		between := rangeOf(a.Range)
		out.Range = &between
	}
	if spare := a.Fit.Spare; a.Fit.Answer == remnant.Enough {
		out.Left = &Spare{CleanEndMM: tidy(spare.CleanEnd), XMM: spare.X, YMM: spare.Y, LengthMM: spare.Length,
			WidthMM: spare.Width}
	}
	for _, over := range a.Fit.Over {
		out.Over = append(out.Over, Overhang{over.Name, over.Garment, tidy(over.By)})
	}
	for _, way := range a.Ways {
		out.Ways = append(out.Ways, wayOf(work, way))
	}
	return out
}

func wayOf(work *job.Work, way remnant.Remedy) Way {
	return Way{
		Kind: way.Change.Kind(), Text: reason.Help(way.Change.With(way.By), work.Format), ByMM: tidy(way.By),
		Lay: way.Fit.Plan.Lay.String(), TakenMM: tidy(way.Fit.Plan.Taken),
	}
}
