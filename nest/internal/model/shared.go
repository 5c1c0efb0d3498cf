package model

import (
	"sync"

	"ellwand/nest/internal/nofit"
)

// Shared holds no-fit tables that several models about the same outlines use.
// Making the tables is most of a short search: of 6.9 s that 300 passes over the
// lays of a blouse of 14 pieces took, 4.6 s. The zero value is empty; it is safe
// for concurrent use, and a nil one keeps nothing.
type Shared struct {
	mutex  sync.Mutex
	ids    map[string]int
	tables map[sharedKey]*nofit.Table
	bytes  int
}

// sharedKey is all that a table is made from.
type sharedKey struct {
	first, second int // ids of the outlines
	relX, relY    float64
	gap, touch    float64
	cells         int
}

// sharedBytes are the most that shared tables hold; further ones are made again
// by each model.
const sharedBytes = 300 << 20

// id of an outline, by all that tells it from others.
func (s *Shared) id(outline string) int {
	if s == nil {
		return 0
	}
	s.mutex.Lock()
	defer s.mutex.Unlock()
	if s.ids == nil {
		s.ids = map[string]int{}
	}
	id, known := s.ids[outline]
	if !known {
		id = len(s.ids)
		s.ids[outline] = id
	}
	return id
}

// table that was made for these outlines, or nil.
func (s *Shared) table(key sharedKey) *nofit.Table {
	if s == nil {
		return nil
	}
	s.mutex.Lock()
	defer s.mutex.Unlock()
	return s.tables[key]
}

func (s *Shared) keep(key sharedKey, table *nofit.Table) {
	if s == nil {
		return
	}
	s.mutex.Lock()
	defer s.mutex.Unlock()
	if s.bytes += table.Bytes(); s.bytes > sharedBytes {
		return
	}
	if s.tables == nil {
		s.tables = map[sharedKey]*nofit.Table{}
	}
	s.tables[key] = table
}
