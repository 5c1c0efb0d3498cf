package page

import (
	"cmp"
	"net/http"
	"slices"

	"ellwand/cmd/ellwand/app"
	"ellwand/cmd/ellwand/job"
	"ellwand/cmd/ellwand/page/desk"
	"ellwand/cmd/ellwand/page/edit"
	"ellwand/cmd/ellwand/page/view"
	"ellwand/cmd/ellwand/strict"
	"ellwand/cmd/ellwand/words"
	"ellwand/cmd/ellwand/words/reason"
	"ellwand/fabric/remnant"
	"ellwand/pieces/language"
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
	// Name of it, as one that is no rectangle has in the job.
	Name string `json:"name"`
	// Other is what another cloth is called that the job has not yet.
	Other string `json:"other"`
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
	text, err := desk.TextAfter(state.Text, there.asked(index))
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
	changes, err := s.offered(o, state, there, index, found.Ways, readerOf(r))
	if err != nil {
		answerFault(w, r, err)
		return
	}
	out["changes"] = changes
	if len(found.Fit.Plan.Pieces) > 0 && found.Fit.Answer == remnant.Enough {
		out["layout"] = view.LaidOf(work, found.Fit.Plan)
		if len(there.Cut) == 0 { // the job goes on wanting pieces that are cut already
			out["take"] = there.taken(index)
		}
	}
	answer(w, http.StatusOK, out)
}

// offered are the changes that make it enough, each with what does it in the job where that
// can be written; of one that moves pieces to another cloth there is one for each.
func (s *server) offered(o *opened, state desk.State, t onTable, cloth int, ways []remnant.Remedy,
	reader language.Language) ([]offeredChange, error) {
	out := []offeredChange{}
	if len(ways) == 0 {
		return out, nil
	}
	drawn, err := view.Of(o.name, state, reader)
	if err != nil {
		return nil, err
	}
	path := s.now().folder.PathOf(o.name)
	file, err := job.Parse(path, []byte(state.Text))
	if err != nil {
		return nil, err
	}
	r := remedy{path: path, text: state.Text, file: file, work: state.Work, pieces: drawn.Pieces, cloth: cloth}
	for _, way := range ways {
		gives := way.Change.With(way.By)
		one := offeredChange{Label: reason.Help(gives, state.Work.Format), Gives: givenUpOf(gives, state.Work.Format)}
		for _, r.other = range r.otherCloths(gives, t.Other) {
			one.Cloth, one.Width, one.Do = r.other, r.newWidth(r.other), r.actionsFor(gives)
			out = append(out, one)
		}
	}
	return out, nil
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

// asked is what puts this piece of cloth in the place of one of the job's, to be asked
// about alone.
func (t onTable) asked(index int) []desk.Action {
	at := strict.Top("cloths").Entry(index)
	return append([]desk.Action{desk.UnsetAt(at.Key("price")), desk.UnsetAt(at.Key("offers"))}, t.taken(index)...)
}

// taken is what makes this piece of cloth the one of the job: its offers are of other
// widths, and what was laid by hand lies on another one.
func (t onTable) taken(index int) []desk.Action {
	at := strict.Top("cloths").Entry(index)
	var out []desk.Action
	gone := []string{"widths", "remnants", "flaws", "offers", "laid_by_hand"}
	if len(t.Outline) > 0 {
		gone = append(gone, "width", "length")
	}
	for _, key := range gone {
		out = append(out, desk.UnsetAt(at.Key(key)))
	}
	flaws := edit.Value{List: []edit.Value{}}
	for _, flaw := range t.Flaws {
		flaws.List = append(flaws.List, edit.Value{Keys: []edit.Pair{{Key: "name", Value: edit.Text(flaw.Name)},
			{Key: "at", Value: cornerOf(flaw.At)}, {Key: "radius", Value: mm(flaw.Radius)}}})
	}
	if len(t.Outline) == 0 {
		out = append(out, setText(at.Key("width"), t.Width), setText(at.Key("length"), t.Length))
		if len(flaws.List) > 0 {
			out = append(out, desk.SetTo(at.Key("flaws"), flaws))
		}
		return out
	}
	corners := edit.Value{List: []edit.Value{}}
	for _, corner := range t.Outline {
		corners.List = append(corners.List, cornerOf(corner))
	}
	piece := edit.Value{Keys: []edit.Pair{
		{Key: "name", Value: edit.Text(cmp.Or(t.Name, "on the table"))}, {Key: "outline", Value: corners}}}
	if len(flaws.List) > 0 {
		piece.Keys = append(piece.Keys, edit.Pair{Key: "flaws", Value: flaws})
	}
	return append(out, desk.SetTo(at.Key("remnants"), edit.Value{List: []edit.Value{piece}}))
}

func cornerOf(p [2]float64) edit.Value { return edit.Value{List: []edit.Value{mm(p[0]), mm(p[1])}} }

// mm is a length as a job file has it, to a thousandth.
func mm(x float64) edit.Value { return edit.Text(thousandths(x) + " mm") }

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
