package page

import (
	"net/http"

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
	o.tasks.mutex.Lock()
	if one := o.tasks.running[at]; one != nil {
		one.cancel()
	}
	o.tasks.mutex.Unlock()
	answer(w, http.StatusAccepted, struct{}{})
}

func showLayout(w http.ResponseWriter, r *http.Request, o *opened) {
	at := spot{r.URL.Query().Get("cloth"), r.URL.Query().Get("width"), r.URL.Query().Get("lay")}
	o.tasks.mutex.Lock()
	found, is := o.tasks.found[at]
	o.tasks.mutex.Unlock()
	if !is {
		answerError(w, r, http.StatusNotFound, "Nothing is laid here yet.")
		return
	}
	answer(w, http.StatusOK, found)
}
