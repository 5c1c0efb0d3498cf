// Package instance reads instances of the open irregular strip packing
// collections (JSON, as in the repository OR-Datasets, doi
// 10.33965/ac2019_201912L016) and writes layouts for them.
package instance

import (
	"encoding/json"
	"errors"
	"fmt"
	"io/fs"
	"math"
	"os"

	"github.com/paulmach/orb"

	"ellwand/nest/layout"
)

// Instance is a set of outlines to lay on a strip of fixed width.
type Instance struct {
	Name    string
	Problem layout.Problem
}

// Pieces is the number of outlines to lay, copies counted.
func (in Instance) Pieces() int {
	n := 0
	for _, item := range in.Problem.Items {
		n += item.Copies
	}
	return n
}

// file is an instance as written. Its "height" is the width of the strip.
type file struct {
	Name  string
	Items []fileItem
	Strip struct{ Height float64 }
}

type fileItem struct {
	Demand              int
	AllowedOrientations []float64
	Shape               struct {
		Type string
		Data json.RawMessage
	}
}

// Read reads the instance at a path. The error says what is wrong with it.
func Read(path string) (Instance, error) {
	data, err := os.ReadFile(path)
	if errors.Is(err, fs.ErrNotExist) {
		return Instance{}, fmt.Errorf("there is no file %s; check the name", path)
	}
	if err != nil {
		return Instance{}, fmt.Errorf("%s cannot be read; check that it is a file, and its permissions", path)
	}
	in, err := Parse(data)
	if err != nil {
		return Instance{}, fmt.Errorf("%s: %w", path, err)
	}
	return in, nil
}

// Parse reads an instance from its text.
func Parse(data []byte) (Instance, error) {
	var f file
	if err := json.Unmarshal(data, &f); err != nil {
		return Instance{}, reworded(data, err)
	}
	if !(f.Strip.Height > 0) {
		return Instance{}, fmt.Errorf("the strip has no width; Strip.Height must be above 0")
	}
	if len(f.Items) == 0 {
		return Instance{}, fmt.Errorf("there are no Items to lay")
	}
	problem := layout.Problem{Width: f.Strip.Height}
	for i, item := range f.Items {
		if item.Demand < 1 {
			return Instance{}, fmt.Errorf("item %d: Demand is %d; it must be 1 or more", i, item.Demand)
		}
		if t := item.Shape.Type; t != "" && t != "SimplePolygon" {
			return Instance{}, fmt.Errorf("item %d: shape %q is not supported; use SimplePolygon", i, t)
		}
		ring, err := ringOf(item.Shape.Data)
		if err != nil {
			return Instance{}, fmt.Errorf("item %d: %w", i, err)
		}
		problem.Items = append(problem.Items, layout.Item{
			Name:    fmt.Sprintf("item %d", i),
			Outline: ring,
			Copies:  item.Demand,
			Turns:   turnsOf(item.AllowedOrientations),
		})
	}
	return Instance{Name: f.Name, Problem: problem}, nil
}

func ringOf(data json.RawMessage) (orb.Ring, error) {
	var points [][]float64
	if err := json.Unmarshal(data, &points); err != nil {
		return nil, fmt.Errorf("its Data must be a ring of [x, y] points")
	}
	ring := make(orb.Ring, 0, len(points)+1)
	for _, p := range points {
		if len(p) != 2 {
			return nil, fmt.Errorf("its Data must be a ring of [x, y] points; one has %d numbers", len(p))
		}
		ring = append(ring, orb.Point{p[0], p[1]})
	}
	if len(ring) < 3 {
		return nil, fmt.Errorf("its outline has %d points; it needs 3 or more", len(ring))
	}
	if ring[0] != ring[len(ring)-1] {
		ring = append(ring, ring[0])
	}
	return ring, nil
}

// turnsOf gives the turns of an item; one that lists none stays as it is.
func turnsOf(degrees []float64) []layout.Turn {
	if len(degrees) == 0 {
		return []layout.Turn{{}}
	}
	turns := make([]layout.Turn, len(degrees))
	for i, d := range degrees {
		turns[i] = layout.Turn{Degrees: math.Mod(d, 360)}
	}
	return turns
}

func reworded(data []byte, err error) error {
	switch e := err.(type) {
	case *json.SyntaxError:
		line := 1
		for _, c := range data[:min(int(e.Offset), len(data))] {
			if c == '\n' {
				line++
			}
		}
		return fmt.Errorf("line %d: this is not JSON; is it an instance file?", line)
	case *json.UnmarshalTypeError:
		return fmt.Errorf("%s holds a %s where an instance has another kind of value", e.Field, e.Value)
	}
	return fmt.Errorf("this is not an instance in JSON")
}
