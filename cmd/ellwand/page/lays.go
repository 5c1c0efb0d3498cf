package page

import (
	"context"
	"errors"
	"slices"
	"sync"
	"time"

	"ellwand/cmd/ellwand/app"
	"ellwand/cmd/ellwand/page/desk"
	"ellwand/cmd/ellwand/page/view"
	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/fabric/plan"
	"ellwand/nest"
	"ellwand/pieces/language"
)

// searches for the lays of one job: one for each spot in view.
type searches struct {
	ctx   context.Context
	desk  *desk.Desk
	told  *teller
	usual app.Search
	// tables of outlines that hands share.
	tables *nest.Tables

	// going are all that are not over yet.
	going   sync.WaitGroup
	mutex   sync.Mutex
	running map[spot]*searching
	// held has the layout of each spot, as long as its question stands.
	held map[spot]*held
}

// searching is one search that goes on.
type searching struct {
	cancel context.CancelFunc
	text   string // of the job that it was begun for
	told   time.Time
}

func newSearches(ctx context.Context, d *desk.Desk, told *teller, usual app.Search) *searches {
	return &searches{ctx: ctx, desk: d, told: told, usual: usual, tables: plan.NewTables(),
		running: map[spot]*searching{}, held: map[spot]*held{}}
}

// stop all, and wait until they are over: they write down what they have found.
func (s *searches) stop() {
	defer s.going.Wait()
	s.mutex.Lock()
	defer s.mutex.Unlock()
	for at, one := range s.running {
		one.cancel()
		delete(s.running, at)
	}
}

// check ends the searches whose job has changed, and drops layouts of it; those of the
// spots that a hand has changed are changed with it, and told.
func (s *searches) check(state desk.State, byHand []spot) {
	s.mutex.Lock()
	defer s.mutex.Unlock()
	for at, one := range s.running {
		if one.text != state.Text {
			one.cancel()
			delete(s.running, at)
		}
	}
	for at, one := range s.held {
		if one.text == state.Text {
			continue
		}
		delete(s.held, at)
		if state.Work == nil {
			continue
		}
		q, err := questionOf(state.Work, at)
		if err != nil || !slices.Contains(byHand, at) && !one.staysUnderHand(q) {
			continue
		}
		if moved, ok := one.movedByHand(q, state, s.tables); ok {
			s.held[at] = moved
			s.told.tell(eventOf("layout", moved.shown))
		}
	}
}

// now is what a page is told that begins to listen.
func (s *searches) now() []event {
	s.mutex.Lock()
	defer s.mutex.Unlock()
	var out []event
	for _, one := range s.held {
		out = append(out, eventOf("layout", one.shown))
	}
	return out
}

// at is the layout that is held of a spot; nil where there is none.
func (s *searches) at(at spot) *held {
	s.mutex.Lock()
	defer s.mutex.Unlock()
	return s.held[at]
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
	s.going.Go(func() { s.run(ctx, one, q, search) })
	return nil
}

// end the search for a spot; what it has found by then is shown.
func (s *searches) end(at spot) {
	s.mutex.Lock()
	defer s.mutex.Unlock()
	if one := s.running[at]; one != nil {
		one.cancel()
	}
}

// run a search to its end, and tell of what it finds.
func (s *searches) run(ctx context.Context, one *searching, q question, search app.Search) {
	watch := app.Watch{
		Better: func(_ cloth.Cloth, kind lay.Kind, better func() (lay.Plan, bool)) {
			if kind == q.kind {
				s.better(one, q, better)
			}
		},
		Found: func(_ cloth.Cloth, kind lay.Kind, p nest.Progress) {
			if kind == q.kind && s.isCurrent(one, q.spot) {
				s.told.tell(eventOf("progress", progressEvent{q.spot, p.Length, q.work.FormatLong(p.Length)}))
			}
		},
	}
	planned, err := app.Plan(ctx, q.work, q.cloth, &q.kind, search, watch)
	one.cancel()
	s.mutex.Lock()
	current := s.running[q.spot] == one
	if current {
		delete(s.running, q.spot)
	}
	s.mutex.Unlock()
	switch {
	case !current:
	case err != nil:
		why := plainIn(q.work, err)
		s.told.tell(saidEvent("done", func(reader language.Language) any { return refusedEvent(q, why, reader) }))
	default:
		if shown, stands := s.hold(one.text, q, planned, true); stands {
			s.told.tell(eventOf("layout", shown))
			s.told.tell(eventOf("done", doneEvent{spot: q.spot, Sentence: shown.Sentence}))
		}
	}
}

func (s *searches) isCurrent(one *searching, at spot) bool {
	s.mutex.Lock()
	defer s.mutex.Unlock()
	return s.running[at] == one
}

// betweenTold is how often a page is told of better layouts: no eye follows more
// [source.OwnChoice].
const betweenTold = 120 * time.Millisecond

// better tells of a better layout while the search goes on.
func (s *searches) better(one *searching, q question, better func() (lay.Plan, bool)) {
	if !s.isCurrent(one, q.spot) || time.Since(one.told) < betweenTold {
		return
	}
	p, ok := better()
	if !ok || s.isNoShorter(one, q.spot, p) {
		return
	}
	one.told = time.Now()
	if shown, stands := s.hold(one.text, q, app.Planned{Plan: p}, false); stands {
		s.told.tell(eventOf("layout", shown))
	}
}

// isNoShorter says that a layout which was proven and is shown answers the same question as
// well: a search that begins anew does not take it away again.
func (s *searches) isNoShorter(one *searching, at spot, p lay.Plan) bool {
	s.mutex.Lock()
	defer s.mutex.Unlock()
	was := s.held[at]
	return was != nil && was.text == one.text && was.shown.Verified && was.plan.Length <= p.Length
}

// hold a layout that was found; false where the job has changed since, so that it answers a
// question of before.
func (s *searches) hold(text string, q question, planned app.Planned, over bool) (view.Layout, bool) {
	s.mutex.Lock()
	defer s.mutex.Unlock()
	state := s.desk.State()
	if state.Text != text {
		return view.Layout{}, false
	}
	shown := view.LayoutOf(q.work, planned, state.Revision)
	shown.Width, shown.Lay, shown.Searching = q.Width, q.Lay, !over
	s.held[q.spot] = &held{text: text, question: q, plan: planned.Plan, shown: shown}
	return shown, true
}

// doneEvent says that a search is over.
type doneEvent struct {
	spot
	Sentence string `json:"sentence"`
	// Refused says that it cannot be laid so, Narrow that the cloth is too narrow.
	Refused bool       `json:"refused,omitempty"`
	Narrow  *tooNarrow `json:"narrow,omitempty"`
}

// refusedEvent says that a spot cannot be laid so.
func refusedEvent(q question, err error, reader language.Language) doneEvent {
	out := doneEvent{spot: q.spot, Sentence: sentence(language.OfError(err).In(reader)), Refused: true}
	var found tooNarrow
	if errors.As(err, &found) {
		out.Narrow = &found
	}
	return out
}

// progressEvent says how far a search is.
type progressEvent struct {
	spot
	LengthMM float64 `json:"length_mm"`
	Sentence string  `json:"sentence"`
}
