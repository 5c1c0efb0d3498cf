package page

import (
	"net/http"

	"ellwand/cmd/ellwand/page/desk"
	"ellwand/fabric/lay"
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
	seen, err := found.look(at, heldAs(found.plan.Pieces[at], request.Placing), request.Slide, o.tasks.tables)
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

// heldAs is a piece as a hand holds it: what is not said of it is as it lies.
func heldAs(l lay.Laid, p desk.Placing) lay.Laid {
	if p.At != nil {
		l.X, l.Y = p.At[0], p.At[1]
	}
	if p.Turn != nil {
		l.Turn = *p.Turn
	}
	if p.Mirrored != nil {
		l.Mirrored = *p.Mirrored
	}
	if p.OnFold != nil {
		l.OnFold = *p.OnFold
	}
	return l
}

// completed are actions with all that the pieces that are laid by hand need, and the
// spots that they are about.
func (o *opened) completed(actions []desk.Action) ([]desk.Action, []spot, error) {
	var spots []spot
	for i, action := range actions {
		if action.Free != nil {
			spots = append(spots, spot{action.Free.Cloth, action.Free.Width, action.Free.Lay})
		}
		for _, placing := range []**desk.Placing{&actions[i].Place, &actions[i].Lock} {
			if *placing == nil {
				continue
			}
			p := **placing
			found, at, err := o.inHand(p)
			if err != nil {
				return nil, nil, err
			}
			l := heldAs(found.plan.Pieces[at], p)
			p.At, p.Turn, p.Mirrored, p.OnFold = &[2]float64{l.X, l.Y}, &l.Turn, &l.Mirrored, &l.OnFold
			p.OnOpen, p.FoldedIn = l.Part > 0, found.plan.FoldedIn
			*placing = &p
			spots = append(spots, spot{p.Cloth, p.Width, p.Lay})
		}
	}
	return actions, spots, nil
}
