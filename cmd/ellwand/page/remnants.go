package page

import (
	"math"
	"net/http"
	"slices"
	"strconv"

	"ellwand/cmd/ellwand/app"
	"ellwand/cmd/ellwand/job"
	"ellwand/cmd/ellwand/page/desk"
	"ellwand/cmd/ellwand/page/edit"
	"ellwand/cmd/ellwand/page/view"
	"ellwand/cmd/ellwand/strict"
	"ellwand/cmd/ellwand/words"
	"ellwand/cmd/ellwand/words/reason"
	"ellwand/fabric/remnant"
)

// onTable is a piece of cloth on the table, in mm.
type onTable struct {
	Cloth  string `json:"cloth"`
	Width  string `json:"width"`
	Length string `json:"length"`
	// Outline by its corners, where it is no rectangle.
	Outline [][2]float64 `json:"outline"`
	Flaws   []struct {
		Name   string     `json:"name"`
		At     [2]float64 `json:"at"`
		Radius float64    `json:"radius"`
	} `json:"flaws"`
	// Cut are the pieces that are cut already, by their IDs.
	Cut []string `json:"cut"`
}

// askRemnant answers whether a piece of cloth is enough, and what would make it so.
func (s *server) askRemnant(w http.ResponseWriter, r *http.Request, o *opened) {
	var there onTable
	if err := asked(r, &there); err != nil {
		answerError(w, r, http.StatusBadRequest, sentence(err.Error()))
		return
	}
	state := o.State()
	if state.Work == nil {
		answerFault(w, r, errFaulty)
		return
	}
	index := slices.IndexFunc(state.Work.Cloths, func(c job.Goods) bool { return c.Cloth.Name == there.Cloth })
	if index < 0 {
		answerFault(w, r, errNoSpot)
		return
	}
	text, err := there.within(state.Text, index)
	if err != nil {
		answerFault(w, r, err)
		return
	}
	found, work, err := s.fits(r, o, text, there)
	if err != nil {
		answerFault(w, r, withoutPlaces(err))
		return
	}
	out := map[string]any{
		"answer": found.Fit.Answer.String(), "of": words.PieceOfCloth(work, found),
		"sentence": sentence(words.PieceOfCloth(work, found) + ": " + words.IsEnough(found, s.options.Search)),
	}
	drawn, err := view.Of(o.name, state)
	if err != nil {
		answerFault(w, r, err)
		return
	}
	changes := []offeredChange{}
	for _, way := range found.Ways {
		gives := way.Change.With(way.By)
		changes = append(changes, offeredChange{reason.Help(gives, work.Format),
			givenUpOf(gives, work.Format), actionsFor(state.Work, drawn.Pieces, gives, index)})
	}
	out["changes"] = changes
	if len(found.Fit.Plan.Pieces) > 0 && found.Fit.Answer == remnant.Enough {
		out["layout"] = view.LaidOf(work, found.Fit.Plan)
	}
	answer(w, http.StatusOK, out)
}

// fits asks in the job as it would be with that piece of cloth.
func (s *server) fits(r *http.Request, o *opened, text string, t onTable) (app.RemnantAnswer, *job.Work, error) {
	file, err := job.Parse(s.now().folder.PathOf(o.name), []byte(text))
	if err != nil {
		return app.RemnantAnswer{}, nil, err
	}
	work, err := file.Resolve()
	if err != nil {
		return app.RemnantAnswer{}, nil, err
	}
	if err := withoutCut(work, t.Cut); err != nil {
		return app.RemnantAnswer{}, nil, err
	}
	cloths, err := app.PiecesOfCloth(work, app.RemnantQuestion{Cloth: t.Cloth})
	if err != nil {
		return app.RemnantAnswer{}, nil, err
	}
	found, err := app.Remnant(r.Context(), file, work, cloths[0], nil, app.UsualLimits(work), s.options.Search,
		app.Watch{})
	if len(t.Cut) > 0 {
		found.Ways = nil // they would be of all pieces, those that are cut already as well
	}
	return found, work, err
}

// within is a job with this piece of cloth in the place of one of its cloths.
func (t onTable) within(text string, index int) (string, error) {
	at := strict.Top("cloths").Entry(index)
	var err error
	for _, key := range []string{"widths", "width", "length", "remnants", "flaws", "offers", "price", "laid_by_hand"} {
		if text, err = edit.Unset(text, at.Key(key)); err != nil {
			return "", err
		}
	}
	flaws := edit.Value{List: []edit.Value{}}
	for _, flaw := range t.Flaws {
		flaws.List = append(flaws.List, edit.Value{Keys: []edit.Pair{{Key: "name", Value: edit.Text(flaw.Name)},
			{Key: "at", Value: cornerOf(flaw.At)}, {Key: "radius", Value: mm(flaw.Radius)}}})
	}
	set := func(path strict.Path, value edit.Value) {
		if err == nil {
			text, err = edit.Set(text, path, value, desk.Order)
		}
	}
	if len(t.Outline) == 0 {
		set(at.Key("width"), edit.Text(t.Width))
		set(at.Key("length"), edit.Text(t.Length))
		if len(flaws.List) > 0 {
			set(at.Key("flaws"), flaws)
		}
		return text, err
	}
	corners := edit.Value{List: []edit.Value{}}
	for _, corner := range t.Outline {
		corners.List = append(corners.List, cornerOf(corner))
	}
	piece := edit.Value{Keys: []edit.Pair{
		{Key: "name", Value: edit.Text("on the table")}, {Key: "outline", Value: corners}}}
	if len(flaws.List) > 0 {
		piece.Keys = append(piece.Keys, edit.Pair{Key: "flaws", Value: flaws})
	}
	set(at.Key("remnants").Entry(0), piece)
	return text, err
}

func cornerOf(p [2]float64) edit.Value { return edit.Value{List: []edit.Value{mm(p[0]), mm(p[1])}} }

// mm is a length as a job file has it, to a thousandth.
func mm(x float64) edit.Value {
	return edit.Text(strconv.FormatFloat(math.Round(x*1000)/1000, 'f', -1, 64) + " mm")
}

// withoutCut leaves out of a job the pieces that are cut already.
func withoutCut(work *job.Work, cut []string) error {
	for _, text := range cut {
		id, err := desk.ParsePieceID(text)
		if err != nil {
			return err
		}
		if !takeOut(work, id) {
			return errGone
		}
	}
	return nil
}

// takeOut takes one of a piece out of a job.
func takeOut(work *job.Work, id desk.PieceID) bool {
	for g := range work.Garments {
		made := &work.Garments[g]
		for i, piece := range made.Pieces {
			if piece.Name != id.Name || made.Quantity == 1 && made.Name != id.Garment {
				continue
			}
			made.Pieces = slices.Clone(made.Pieces)
			made.Pieces[i].Cut--
			made.Pieces[i].Pair = piece.Pair && made.Pieces[i].Cut%2 == 0
			if made.Pieces[i].Cut == 0 {
				made.Pieces = slices.Delete(made.Pieces, i, i+1)
			}
			return true
		}
	}
	return false
}
