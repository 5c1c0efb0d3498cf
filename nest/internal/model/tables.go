package model

import (
	"sync"
	"sync/atomic"

	"github.com/paulmach/orb"

	"ellwand/nest/internal/nofit"
)

// tables holds the no-fit regions by pair of bases and mirror image of the
// second against the first. Mirroring both, and exchanging the two, give the
// same region mirrored, so four orientations of each outline share tables.
type tables struct {
	once    sync.Once
	slots   []slot
	bases   int
	cells   int
	waiting [64]sync.Mutex
	shared  *Shared
}

type slot struct{ table atomic.Pointer[nofit.Table] }

// Pair returns the table of two shapes, for shape b at an offset from shape a.
func (m *Model) Pair(a, b int) nofit.View {
	m.tables.once.Do(m.makeSlots)
	s, o := &m.Shapes[a], &m.Shapes[b]
	first, second := s.Base, o.Base
	flipX, flipY := s.FlipX, s.FlipY
	if first > second {
		first, second = second, first
		flipX, flipY = -o.FlipX, -o.FlipY
	}
	relX, relY := s.FlipX*o.FlipX, s.FlipY*o.FlipY
	key := (first*m.tables.bases + second) * 4
	if relX < 0 {
		key++
	}
	if relY < 0 {
		key += 2
	}
	table := m.tables.slots[key].table.Load()
	if table == nil {
		table = m.build(key, first, second, relX, relY)
	}
	return table.View(flipX, flipY)
}

func (m *Model) makeSlots() {
	n := len(m.Bases)
	m.tables.bases = n
	m.tables.slots = make([]slot, n*n*4)
	m.tables.cells = cellsAcross(n)
}

// cellsAcross keeps the tables of a job small, within some 300 MB and, for the
// usual few dozen outlines, within the processor's caches: 48 cells gave 0.4
// points more density in four seconds than 96, on average over the four
// garment sets, since half the time of a look-up is waiting for memory.
func cellsAcross(bases int) int {
	switch {
	case bases <= 90:
		return 48
	case bases <= 160:
		return 40
	}
	return 24
}

func (m *Model) build(key, first, second int, relX, relY float64) *nofit.Table {
	lock := &m.tables.waiting[key%len(m.tables.waiting)]
	lock.Lock()
	defer lock.Unlock()
	if table := m.tables.slots[key].table.Load(); table != nil {
		return table
	}
	a, b := &m.Bases[first], &m.Bases[second]
	gap := m.Gap
	if a.Obstacle || b.Obstacle {
		gap = 0
	}
	outlines := sharedKey{a.id, b.id, relX, relY, gap, m.Touch, m.tables.cells}
	if table := m.tables.shared.table(outlines); table != nil {
		m.tables.slots[key].table.Store(table)
		return table
	}
	parts := make([][]orb.Point, len(b.Parts))
	for i, p := range b.Parts {
		parts[i] = flipped(p, relX, relY)
	}
	table := nofit.Build(a.Parts, parts, gap, m.tables.cells, m.Touch)
	m.tables.shared.keep(outlines, table)
	m.tables.slots[key].table.Store(table)
	return table
}

// flipped mirrors a counter-clockwise outline and keeps it counter-clockwise.
func flipped(p []orb.Point, flipX, flipY float64) []orb.Point {
	out := make([]orb.Point, len(p))
	for i, q := range p {
		at := i
		if flipX*flipY < 0 {
			at = len(p) - 1 - i
		}
		out[at] = orb.Point{float64(flipX * q[0]), float64(flipY * q[1])}
	}
	return out
}
