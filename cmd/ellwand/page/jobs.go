package page

import (
	"context"
	"sync"

	"ellwand/cmd/ellwand/app"
	"ellwand/cmd/ellwand/page/desk"
	"ellwand/cmd/ellwand/page/folder"
	"ellwand/cmd/ellwand/page/view"
	"ellwand/pieces/language"
)

// jobs are those that are open, each on its desk.
type jobs struct {
	mutex  sync.Mutex
	ctx    context.Context
	folder *folder.Folder
	search app.Search
	open   map[string]*opened
}

// opened is a job on its desk, with the pages that listen to it.
type opened struct {
	*desk.Desk
	name  string
	told  *teller
	tasks *searches
	stops *stops
}

func newJobs(ctx context.Context, f *folder.Folder, search app.Search) *jobs {
	return &jobs{ctx: ctx, folder: f, search: search, open: map[string]*opened{}}
}

// named is the job of a name, which is put on a desk where it is not on one.
func (j *jobs) named(name string) (*opened, error) {
	j.mutex.Lock()
	defer j.mutex.Unlock()
	if one, is := j.open[name]; is {
		return one, nil
	}
	d, err := desk.Open(j.folder, name)
	if err != nil {
		return nil, err
	}
	one := &opened{Desk: d, name: name, told: newTeller(), stops: newStops()}
	one.tasks = newSearches(j.ctx, d, one.told, j.search)
	j.open[name] = one
	return one, nil
}

// all that are open.
func (j *jobs) all() []*opened {
	j.mutex.Lock()
	defer j.mutex.Unlock()
	var out []*opened
	for _, one := range j.open {
		out = append(out, one)
	}
	return out
}

func (j *jobs) close() {
	for _, one := range j.all() {
		one.tasks.stop()
		one.told.close()
		_ = one.Close() // the journal is written line by line; nothing waits in it
	}
}

// look for changes from outside, and tell of them.
func (o *opened) look() {
	changed, err := o.Look()
	if err != nil || !changed {
		return
	}
	state := o.State()
	o.told.tell(saidEvent("outside", func(reader language.Language) any {
		return view.Told{Sentence: state.Outside.In(reader)}
	}))
	o.changed(state, nil)
}

// changed tells of a new revision, and ends searches that it makes idle; byHand are the
// spots on which pieces were laid by hand.
func (o *opened) changed(state desk.State, byHand []spot) {
	o.tasks.check(state, byHand)
	o.told.tell(eventOf("revision", map[string]int{"revision": state.Revision}))
}
