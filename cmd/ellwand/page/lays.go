package page

import (
	"context"
	"strconv"
	"strings"
	"sync"

	"ellwand/cmd/ellwand/app"
	"ellwand/cmd/ellwand/job"
	"ellwand/cmd/ellwand/page/desk"
	"ellwand/cmd/ellwand/page/view"
	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/fabric/plan"
	"ellwand/nest"
)

// spot is what is looked at: a cloth in a width, spread in a lay.
type spot struct {
	Cloth string `json:"cloth"`
	Width string `json:"width"`
	Lay   string `json:"lay"`
}

// searches for the lays of one job: one for each spot in view.
type searches struct {
	ctx   context.Context
	desk  *desk.Desk
	told  *teller
	usual app.Search

	mutex   sync.Mutex
	running map[spot]*searching
	// found has the last layout of each spot, as long as its question stands.
	found map[spot]view.Layout
}

// searching is one search that goes on.
type searching struct {
	cancel context.CancelFunc
	text   string // of the job that it was begun for
}

func newSearches(ctx context.Context, d *desk.Desk, told *teller, usual app.Search) *searches {
	return &searches{ctx: ctx, desk: d, told: told, usual: usual, running: map[spot]*searching{}, found: map[spot]view.Layout{}}
}

// stop all.
func (s *searches) stop() {
	s.mutex.Lock()
	defer s.mutex.Unlock()
	for at, one := range s.running {
		one.cancel()
		delete(s.running, at)
	}
}

// check ends the searches whose job has changed.
func (s *searches) check(state desk.State) {
	s.mutex.Lock()
	defer s.mutex.Unlock()
	for at, one := range s.running {
		if one.text != state.Text {
			one.cancel()
			delete(s.running, at)
		}
	}
	clear(s.found)
}

// now is what a page is told that begins to listen.
func (s *searches) now() []event {
	s.mutex.Lock()
	defer s.mutex.Unlock()
	var out []event
	for _, one := range s.found {
		out = append(out, eventOf("layout", one))
	}
	return out
}

// asked is what a spot asks for in a job.
type question struct {
	spot
	work  *job.Work
	cloth cloth.Cloth
	kind  lay.Kind
}

// questionOf a spot; what is wrong with it otherwise.
func questionOf(work *job.Work, at spot) (question, error) {
	out := question{spot: at, work: work}
	kind, known := lay.Named(at.Lay)
	if !known {
		return out, errNoSpot
	}
	out.kind = kind
	width, err := strconv.ParseFloat(strings.TrimSuffix(at.Width, "mm"), 64)
	if err != nil {
		return out, errNoSpot
	}
	cloths, err := app.Cloths(work, nil)
	if err != nil {
		return out, err
	}
	for _, c := range cloths {
		if c.Name == at.Cloth && view.Address(c.Width) == view.Address(width) {
			out.cloth = c
			return out, nil
		}
	}
	return out, errNoSpot
}

// start the search for a spot, unless it goes on already.
func (s *searches) start(at spot, effort plan.Effort) error {
	state := s.desk.State()
	if state.Work == nil {
		return errFaulty
	}
	q, err := questionOf(state.Work, at)
	if err != nil {
		return err
	}
	s.mutex.Lock()
	defer s.mutex.Unlock()
	if s.running[at] != nil {
		return nil
	}
	ctx, cancel := context.WithCancel(s.ctx)
	one := &searching{cancel: cancel, text: state.Text}
	s.running[at] = one
	search := s.usual
	search.Effort = effort
	go s.run(ctx, one, q, state.Revision, search)
	return nil
}

// run a search to its end, and tell of what it finds.
func (s *searches) run(ctx context.Context, one *searching, q question, revision int, search app.Search) {
	watch := app.Watch{Found: func(_ cloth.Cloth, kind lay.Kind, p nest.Progress) {
		if kind == q.kind {
			s.progress(one, q, p)
		}
	}}
	planned, err := app.Plan(ctx, q.work, q.cloth, &q.kind, search, watch)
	s.mutex.Lock()
	current := s.running[q.spot] == one
	if current {
		delete(s.running, q.spot)
	}
	s.mutex.Unlock()
	one.cancel()
	switch {
	case !current:
		return
	case err != nil:
		s.told.tell(eventOf("done", doneEvent{q.spot, sentence(err.Error())}))
		return
	}
	shown := view.LayoutOf(q.work, planned, revision)
	shown.Width, shown.Lay = q.Width, q.Lay
	s.mutex.Lock()
	s.found[q.spot] = shown
	s.mutex.Unlock()
	s.told.tell(eventOf("layout", shown))
	s.told.tell(eventOf("done", doneEvent{q.spot, shown.Sentence}))
}

// doneEvent says that a search is over.
type doneEvent struct {
	spot
	Sentence string `json:"sentence"`
}

// progressEvent says how far a search is.
type progressEvent struct {
	spot
	LengthMM float64 `json:"length_mm"`
	Sentence string  `json:"sentence"`
}

// progress tells of a better length.
func (s *searches) progress(one *searching, q question, p nest.Progress) {
	s.mutex.Lock()
	current := s.running[q.spot] == one
	s.mutex.Unlock()
	if current {
		s.told.tell(eventOf("progress", progressEvent{q.spot, p.Length, q.work.FormatLong(p.Length)}))
	}
}
