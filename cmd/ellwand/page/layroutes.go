package page

import (
	"net/http"

	"ellwand/cmd/ellwand/page/desk"
	"ellwand/fabric/plan"
)

// startLay begins the search that a page looks at.
func startLay(w http.ResponseWriter, r *http.Request, o *opened) {
	var request struct {
		spot
		Effort string `json:"effort"`
	}
	if err := asked(r, &request); err != nil {
		answerError(w, r, http.StatusBadRequest, sentence(err.Error()))
		return
	}
	effort, known := plan.EffortNamed(request.Effort)
	if !known {
		effort = plan.Usual
	}
	if err := o.tasks.start(request.spot, effort); err != nil {
		answerFault(w, r, err)
		return
	}
	answer(w, http.StatusAccepted, struct{}{})
}

// stopLay ends it; what it has found by then is shown.
func stopLay(w http.ResponseWriter, r *http.Request, o *opened) {
	var at spot
	if err := asked(r, &at); err != nil {
		answerError(w, r, http.StatusBadRequest, sentence(err.Error()))
		return
	}
	o.tasks.end(at)
	answer(w, http.StatusAccepted, struct{}{})
}

func showLayout(w http.ResponseWriter, r *http.Request, o *opened) {
	found := o.tasks.at(spot{r.URL.Query().Get("cloth"), r.URL.Query().Get("width"), r.URL.Query().Get("lay")})
	if found == nil {
		answerCoded(w, r, http.StatusNotFound, errNotLaid)
		return
	}
	answer(w, http.StatusOK, found.shown)
}

// look says what a piece meets where a hand holds it; nothing is changed.
func look(w http.ResponseWriter, r *http.Request, o *opened) {
	var request struct {
		desk.Placing
		Slide bool `json:"slide"`
	}
	if err := asked(r, &request); err != nil {
		answerError(w, r, http.StatusBadRequest, sentence(err.Error()))
		return
	}
	found, at, err := o.inHand(request.Placing)
	if err != nil {
		answerFault(w, r, err)
		return
	}
	seen, err := found.look(at, request.Placing, request.Slide, o.tasks.tables, readerOf(r))
	if err != nil {
		answerFault(w, r, withoutPlaces(err))
		return
	}
	answer(w, http.StatusOK, seen)
}

// inHand is the layout that a piece is moved on, and its index there.
func (o *opened) inHand(p desk.Placing) (*held, int, error) {
	found := o.tasks.at(spot{p.Cloth, p.Width, p.Lay})
	if found == nil || p.Piece == nil {
		return nil, 0, errNotLaid
	}
	if found.plan.Lay != found.kind {
		return nil, 0, errNoGain
	}
	at := found.named(*p.Piece)
	if at < 0 {
		return nil, 0, errNotLaid
	}
	return found, at, nil
}

// completed are actions with all that the pieces that are laid by hand need, and the
// spots that they are about.
func (o *opened) completed(actions []desk.Action) ([]desk.Action, []spot, error) {
	var out []desk.Action
	var spots []spot
	for _, action := range actions {
		if action.Free != nil {
			spots = append(spots, spot{action.Free.Cloth, action.Free.Width, action.Free.Lay})
		}
		for _, placing := range []**desk.Placing{&action.Place, &action.Lock} {
			if *placing == nil {
				continue
			}
			p, freed, err := o.completedPlacing(**placing, action.Lock != nil)
			if err != nil {
				return nil, nil, err
			}
			*placing, out = &p, append(out, freed...)
			spots = append(spots, spot{p.Cloth, p.Width, p.Lay})
		}
		out = append(out, action)
	}
	return out, spots, nil
}

// completedPlacing is a placing with all that is written of it, and what frees the pieces
// that do not lie by themselves then.
func (o *opened) completedPlacing(p desk.Placing, stays bool) (desk.Placing, []desk.Action, error) {
	found, at, err := o.inHand(p)
	if err != nil {
		return p, nil, err
	}
	l, goes, err := found.laid(at, p, stays, o.tasks.tables)
	if err != nil {
		return p, nil, err
	}
	var freed []desk.Action
	for _, id := range goes {
		freed = append(freed, desk.Action{Free: &desk.Placing{Cloth: p.Cloth, Width: p.Width, Lay: p.Lay, Piece: &id}})
	}
	isOpen := l.Bed > 0
	p.At, p.Turn, p.Mirrored, p.OnFold = &[2]float64{l.X, l.Y}, &l.Turn, &l.Mirrored, &l.OnFold
	p.OnOpen, p.FoldedIn = &isOpen, found.plan.FoldedIn
	return p, freed, nil
}
