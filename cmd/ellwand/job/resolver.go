package job

import (
	"ellwand/cmd/ellwand/strict"
	"ellwand/draft"
	"ellwand/fabric/quote"
	"ellwand/pieces/language"
)

// resolver turns a file into work, collecting every fault on the way.
type resolver struct {
	values
	file   *File
	faults *Faults
	work   Work
	// wearing is the body that garments are being drafted for.
	wearing wearer
	// shorter is a part of a garment that is drafted shorter than written.
	shorter shortening
	// lays counts what is cut from each cloth.
	lays lays
	// all garments, each for each wearer; ended says that not all were drafted.
	all   int
	ended *Ended
	// rate is what an hour of making costs unless it says otherwise; isRated says
	// that the job gives one, be it 0.
	rate    quote.Money
	isRated bool
}

func newResolver(file *File) *resolver {
	r := &resolver{file: file, faults: &Faults{File: file.name}, lays: lays{}}
	r.Note = func(path Path, kind strict.Kind, said language.Sentence) {
		r.faults.List = append(r.faults.List, file.fault(path, kind, said))
	}
	return r
}

// wearer is a body that garments are drafted for.
type wearer struct {
	path       Path // empty for the one at the top
	name, size string
	body       draft.Body
	// table is the size table from which missing measurements are derived, and
	// derived says by which rule each was.
	table   string
	derived Derived
	// bodiless says that the body has faults of its own, so that drafting
	// would only repeat them.
	bodiless bool
}

// shortening is one that is asked for.
type shortening struct {
	Shortening
	by float64
}

// lays counts what is cut from each cloth.
type lays map[string]*struct{ pieces, corners int }
