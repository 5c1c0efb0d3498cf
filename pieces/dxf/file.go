package dxf

import (
	"ellwand/pieces"
	"ellwand/pieces/found"
)

// block is what is drawn once, to be inserted.
type block struct {
	name     string
	base     [2]float64
	entities []entity
}

// file is what a DXF file holds, for us.
type file struct {
	unit     float64 // mm; 0 where it is not said
	blocks   map[string]*block
	order    []*block
	entities []entity
	left     map[string]int // entities that are not understood, by name
	names    []string       // of those, in the order of the file
}

// insertUnits are the units of $INSUNITS, mm.
var insertUnits = map[int]float64{1: 25.4, 2: 304.8, 4: 1, 5: 10, 6: 1000, 8: 25.4e-6, 9: 0.0254, 10: 914.4, 13: 0.001,
	14: 100}

// parser reads a file.
type parser struct {
	s      *scanner
	f      *file
	limits found.Limits
	things int
	points int
	words  int
	// tooLong says that something had more groups than are read.
	tooLong bool
	now     group
	ok      bool
}

func parse(data []byte, limits found.Limits) (*file, error) {
	p := &parser{s: newScanner(data), limits: limits, f: &file{blocks: map[string]*block{}, left: map[string]int{}}}
	p.next()
	for p.ok {
		if p.now.code != 0 || !p.s.is(p.now, "SECTION") {
			p.next()
			continue
		}
		if err := p.section(); err != nil {
			return nil, err
		}
	}
	return p.f, p.s.err
}

func (p *parser) next() { p.now, p.ok = p.s.next() }

// at says that the next group is the beginning of something.
func (p *parser) at(name string) bool { return p.ok && p.now.code == 0 && p.s.is(p.now, name) }

func (p *parser) section() error {
	p.next()
	if !p.ok {
		return p.s.err
	}
	name := p.s.text(p.now)
	p.next()
	switch name {
	case "HEADER":
		p.header()
	case "BLOCKS":
		return p.blocks()
	case "ENTITIES":
		var err error
		p.f.entities, err = p.list("ENDSEC")
		return err
	default:
		for p.ok && !p.at("ENDSEC") && !p.at("SECTION") {
			p.next()
		}
	}
	return p.s.err
}

func (p *parser) header() {
	for p.ok && p.now.code != 0 {
		isUnit := p.now.code == 9 && p.s.is(p.now, "$INSUNITS")
		p.next()
		if isUnit && p.ok && p.now.code == 70 {
			p.f.unit = insertUnits[p.s.whole(p.now)]
		}
	}
}

func (p *parser) blocks() error {
	for p.ok && !p.at("ENDSEC") {
		if !p.at("BLOCK") {
			p.next()
			continue
		}
		r := p.record()
		base, err := r.point(10, 20)
		if err != nil {
			return err
		}
		b := &block{name: decoded(r.text(2)), base: base}
		if b.entities, err = p.list("ENDBLK"); err != nil {
			return err
		}
		if p.f.blocks[b.name] == nil {
			p.f.order = append(p.f.order, b)
		}
		p.f.blocks[b.name] = b
		if err := p.limits.Check(found.Things, len(p.f.order)); err != nil {
			return err
		}
	}
	return p.s.err
}

// record reads the groups of what begins here, up to the next beginning.
func (p *parser) record() record {
	r := record{s: p.s}
	p.next()
	const data = 1000 // codes from here are data of other programs
	most := 4*p.limits[found.Vertices] + data
	for p.ok && p.now.code != 0 {
		if p.now.code < data && len(r.groups) <= most {
			r.groups = append(r.groups, p.now)
		}
		p.next()
	}
	if len(r.groups) > most {
		r.groups, p.tooLong = nil, true
	}
	return r
}

// list reads entities up to an end.
func (p *parser) list(end string) ([]entity, error) {
	var out []entity
	for p.ok && !p.at(end) && !p.at("ENDSEC") {
		name := p.s.text(p.now)
		if p.things++; p.things > p.limits[found.Things] {
			return nil, &found.TooMuch{What: found.Things}
		}
		r := p.record()
		e := entity{layer: decoded(r.text(8))}
		var err error
		switch read := readers[name]; {
		case r.whole(67) != 0: // on a page for paper, not in the drawing
			p.leave("PAPER SPACE")
		case name == "POLYLINE":
			err = p.heavy(r, &e)
		case read != nil:
			if err = p.count(r); err == nil {
				err = read(r, &e)
			}
		default:
			p.leave(name)
		}
		if err != nil {
			return nil, err
		}
		if e.kind != ignored {
			out = append(out, e)
		} else if readers[name] != nil {
			p.leave(name)
		}
	}
	return out, p.s.err
}

func (p *parser) leave(name string) {
	if silent[name] {
		return
	}
	if p.f.left[name] == 0 {
		p.f.names = append(p.f.names, name)
	}
	p.f.left[name]++
}

// count what an entity holds before it is read.
func (p *parser) count(r record) error {
	for _, g := range r.groups {
		switch g.code {
		case 10, 11:
			p.points++
		case 1, 3:
			p.words++
		}
	}
	if p.tooLong {
		return &found.TooMuch{What: found.Vertices}
	}
	return first(p.limits.Check(found.Vertices, p.points), p.limits.Check(found.Words, p.words))
}

// heavy reads a polyline whose vertices follow it as entities of their own.
func (p *parser) heavy(r record, e *entity) error {
	flags := r.whole(70)
	const closed, mesh, smoothed, frame = 1, 16 | 64, 4, 16
	var all []vertex
	for p.at("VERTEX") {
		v := p.record()
		if err := p.count(v); err != nil {
			return err
		}
		at, err := v.point(10, 20)
		bulge, errB := v.number(42, 0)
		if err := first(err, errB); err != nil {
			return err
		}
		if flags&smoothed != 0 && v.whole(70)&frame != 0 {
			continue // a control point, beside the points of the curve
		}
		all = append(all, vertex{at, bulge})
	}
	if p.at("SEQEND") {
		p.record()
	}
	if flags&mesh != 0 {
		p.leave("POLYLINE")
		return nil
	}
	return r.polyline(e, all, flags&closed != 0)
}

// lines of entities, for their extent.
func extent(all []placed) (across, up float64) {
	first := true
	var low, high [2]float64
	for _, one := range all {
		for _, c := range one.path {
			for _, q := range [2][2]float64{c.Start(), c.End()} {
				for k := range q {
					if first || q[k] < low[k] {
						low[k] = q[k]
					}
					if first || q[k] > high[k] {
						high[k] = q[k]
					}
				}
				first = false
			}
		}
	}
	return high[0] - low[0], high[1] - low[1]
}

// placed is an entity where its blocks are inserted.
type placed struct {
	entity
	path pieces.Path
}
