package bound

import (
	"crypto/sha256"
	"encoding/gob"
	"slices"
	"sync"

	"ellwand/nest/layout"
)

// mostKept bounds are kept: of the lays of one cloth at the widths that are compared
// [source.OwnChoice].
const mostKept = 64

// memo keeps the bounds of the last problems. A lay asks for that of one problem several
// times (when it is weighed against the shortest, when it is searched, when it is laid
// anew), and each takes as long as many passes of a search. It is safe for several at once.
type memo struct {
	mu    sync.Mutex
	kept  map[digest]float64
	order []digest // the oldest first
}

type digest [sha256.Size]byte

// digestOf all that the bound of a problem depends on; false where it has none.
func digestOf(p layout.Problem) (digest, bool) {
	hash := sha256.New()
	if err := gob.NewEncoder(hash).Encode(p); err != nil {
		return digest{}, false
	}
	return digest(hash.Sum(nil)), true
}

// of is the bound of a problem, found if it is not kept.
func (m *memo) of(p layout.Problem, find func(layout.Problem) float64) float64 {
	key, ok := digestOf(p)
	if !ok {
		return find(p)
	}
	if length, isKept := m.get(key); isKept {
		return length
	}
	length := find(p)
	m.put(key, length)
	return length
}

func (m *memo) get(key digest) (length float64, isKept bool) {
	m.mu.Lock()
	defer m.mu.Unlock()
	length, isKept = m.kept[key]
	return length, isKept
}

func (m *memo) put(key digest, length float64) {
	m.mu.Lock()
	defer m.mu.Unlock()
	if _, isKept := m.kept[key]; isKept {
		return
	}
	if m.kept == nil {
		m.kept = map[digest]float64{}
	}
	if len(m.order) == mostKept {
		delete(m.kept, m.order[0])
		m.order = slices.Delete(m.order, 0, 1)
	}
	m.kept[key] = length
	m.order = append(m.order, key)
}
