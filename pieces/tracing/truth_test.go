package tracing

import (
	"encoding/json"
	"math"
	"os"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/require"

	"ellwand/pieces/geometry"
)

// truth is what a rendered picture shows.
type truth struct {
	Pieces []struct {
		Name    string
		Outline []orb.Point
		Corners []orb.Point
		Area    float64
	}
	Points [][2]orb.Point
	Scene  struct {
		Square    float64
		Distances [][2]orb.Point
		Sheets    [][]any
		Size      [2]int
	}
}

func readTruth(t require.TestingT, path string) truth {
	data, err := os.ReadFile(path)
	require.NoError(t, err)
	var out truth
	require.NoError(t, json.Unmarshal(data, &out))
	return out
}

// measured is how far a traced outline lies from the true one, which it was moved onto.
type measured struct {
	name           string
	most, mean     float64 // mm between the lines
	corner         float64 // mm, of the corner that is farthest off
	area           float64 // share
	reported       float64
	corners, wants int
	at             orb.Point // where it is farthest off, on the true plane
}

// measure finds the true outline that a traced one is, and how far it is off.
func measure(o Outline, all truth) measured {
	var line []orb.Point
	var corners []orb.Point
	for _, e := range o.Edges {
		p := e.Flatten(0.01)
		corners = append(corners, e.Start())
		line = append(line, p[:len(p)-1]...)
	}
	dense := densely(line, 2)
	best := measured{most: math.Inf(1)}
	for _, p := range all.Pieces {
		area := math.Abs(geometry.Area(line))
		if math.Abs(area/p.Area-1) > 0.2 {
			continue
		}
		{
			moved := fitOnto(dense, p.Outline)
			m := measured{name: p.Name, area: area/p.Area - 1, reported: o.Accuracy, corners: len(o.Corners),
				wants: len(p.Corners)}
			for _, q := range moved.all(dense) {
				d := toLine(q, p.Outline)
				if d > m.most {
					m.most, m.at = d, q
				}
				m.mean += d / float64(len(dense))
			}
			back := moved.all(line)
			for _, q := range p.Outline {
				if d := toLine(q, back); d > m.most {
					m.most, m.at = d, q
				}
			}
			placed := moved.all(corners)
			for _, q := range p.Corners {
				least := math.Inf(1)
				for _, c := range placed {
					least = math.Min(least, geometry.Distance(q, c))
				}
				m.corner = math.Max(m.corner, least)
			}
			if m.most < best.most {
				best = m
			}
		}
	}
	return best
}

func densely(line []orb.Point, apart float64) []orb.Point {
	var out []orb.Point
	for i, a := range line {
		b := line[(i+1)%len(line)]
		n := int(math.Ceil(geometry.Distance(a, b) / apart))
		for k := range n {
			out = append(out, geometry.Between(a, b, float64(k)/float64(n)))
		}
	}
	return out
}

// rigid is a turn about 0 and a move.
type rigid struct {
	angle float64
	by    orb.Point
}

func (m rigid) all(points []orb.Point) []orb.Point {
	sin, cos := math.Sincos(m.angle)
	out := make([]orb.Point, len(points))
	for i, p := range points {
		out[i] = orb.Point{cos*p[0] - sin*p[1] + m.by[0], sin*p[0] + cos*p[1] + m.by[1]}
	}
	return out
}

// fitOnto moves points onto a line by least squares of the distances to it, from the
// best of 24 turns.
func fitOnto(points, line []orb.Point) rigid {
	best, least := rigid{}, math.Inf(1)
	for turn := range 24 {
		m := rigid{angle: float64(turn) * math.Pi / 12}
		m.by = geometry.Sub(orb.MultiPoint(line).Bound().Center(), orb.MultiPoint(m.all(points)).Bound().Center())
		if off := m.settle(thinned(points, 40), thinned(line, 200), 12); off < least {
			best, least = m, off
		}
	}
	best.settle(thinned(points, 300), line, 60)
	return best
}

// settle moves on towards the line, in so many steps at most; the mean square distance.
func (m *rigid) settle(points, line []orb.Point, most int) float64 {
	last := math.Inf(1)
	for range most {
		var a [3][4]float64 // normal equations of a small turn and a move
		sum := 0.0
		for _, p := range m.all(points) {
			d := geometry.Sub(nearestOn(p, line), p)
			size := geometry.Norm(d)
			sum += size * size / float64(len(points))
			if size < 1e-9 {
				continue
			}
			u := geometry.Unit(d)
			row := [4]float64{geometry.Cross(p, u), u[0], u[1], size}
			for i := range 3 {
				for k := range 4 {
					a[i][k] += row[i] * row[k]
				}
			}
		}
		if sum > last*0.99999 {
			break
		}
		last = sum
		x := solve3(a)
		sin, cos := math.Sincos(x[0])
		m.by = orb.Point{cos*m.by[0] - sin*m.by[1] + x[1], sin*m.by[0] + cos*m.by[1] + x[2]}
		m.angle += x[0]
	}
	return last
}

func solve3(a [3][4]float64) [3]float64 {
	for i := range 3 {
		a[i][i] += 1e-9 * (1 + a[i][i])
		for r := range 3 {
			if r == i {
				continue
			}
			f := a[r][i] / a[i][i]
			for k := range 4 {
				a[r][k] -= f * a[i][k]
			}
		}
	}
	return [3]float64{a[0][3] / a[0][0], a[1][3] / a[1][1], a[2][3] / a[2][2]}
}

func nearestOn(p orb.Point, line []orb.Point) orb.Point {
	best, at := math.Inf(1), p
	for i, a := range line {
		b := line[(i+1)%len(line)]
		d := geometry.Sub(b, a)
		t := geometry.Dot(geometry.Sub(p, a), d) / math.Max(geometry.Dot(d, d), 1e-12)
		q := geometry.Between(a, b, math.Min(math.Max(t, 0), 1))
		if r := geometry.Distance(p, q); r < best {
			best, at = r, q
		}
	}
	return at
}

func toLine(p orb.Point, line []orb.Point) float64 { return geometry.Distance(p, nearestOn(p, line)) }
