package page

import (
	"net/http"

	"ellwand/cmd/ellwand/page/illustration"
)

// jobRoutes are what is asked of one job.
func (s *server) jobRoutes(mux *http.ServeMux) {
	mux.HandleFunc("GET /api/jobs/{name}", s.withJob(showJob))
	mux.HandleFunc("POST /api/jobs/{name}/act", s.withJob(act))
	mux.HandleFunc("GET /api/jobs/{name}/events", s.withJob(s.jobEvents))
	mux.HandleFunc("GET /api/jobs/{name}/layout", s.withJob(showLayout))
	mux.HandleFunc("POST /api/jobs/{name}/lay", s.withJob(startLay))
	mux.HandleFunc("POST /api/jobs/{name}/look", s.withJob(look))
	mux.HandleFunc("POST /api/jobs/{name}/stop", s.withJob(stopLay))
	mux.HandleFunc("GET /api/jobs/{name}/table", s.withJob(reported(tableOf)))
	mux.HandleFunc("GET /api/jobs/{name}/sizes", s.withJob(s.streamTable))
	mux.HandleFunc("POST /api/jobs/{name}/sizes/stop", s.withJob(stopTable))
	mux.HandleFunc("GET /api/jobs/{name}/compare", s.withJob(reported(comparisonOf)))
	mux.HandleFunc("GET /api/jobs/{name}/quote", s.withJob(reported(quoteOf)))
	mux.HandleFunc("POST /api/jobs/{name}/remnant", s.withJob(s.askRemnant))
	mux.HandleFunc("GET /print/{name}/{kind}", s.withJob(printed))
}

// folderRoutes are what is asked of the folder.
func (s *server) folderRoutes(mux *http.ServeMux) {
	mux.HandleFunc("GET /api/folder", s.showFolder)
	mux.HandleFunc("POST /api/folder", s.chooseFolder)
	mux.HandleFunc("GET /api/amount/{name}", s.cardAmount)
	mux.HandleFunc("POST /api/jobs", s.beginJob)
	mux.HandleFunc("POST /api/drawing", s.lookThrough)
	mux.HandleFunc("GET /picture/drawing/{name}", s.drawingPicture)
	mux.HandleFunc("POST /api/question", s.answerQuestion)
	mux.HandleFunc("GET /api/size", showSizes)
	mux.HandleFunc("GET /api/clients", s.showClients)
	mux.HandleFunc("POST /api/clients", s.noteVisit)
	mux.HandleFunc("GET /api/events", func(w http.ResponseWriter, r *http.Request) {
		s.stream(w, r, s.told, func() []event { return nil })
	})
	mux.HandleFunc("POST /api/here", func(w http.ResponseWriter, _ *http.Request) {
		s.tabs.here()
		answer(w, http.StatusAccepted, struct{}{})
	})
	mux.HandleFunc("GET /picture/garment/{name}", pictured(illustration.Garment))
	mux.HandleFunc("GET /picture/tape/{name}", pictured(illustration.Tape))
	mux.HandleFunc("GET /picture/option/{option}/{name}", optionPictured)
	mux.HandleFunc("GET /picture/job/{name}", s.jobPicture)
}
