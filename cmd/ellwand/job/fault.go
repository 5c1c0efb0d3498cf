package job

import (
	"fmt"
	"sort"
	"strings"
)

// Fault is one thing wrong in a job file, said so that it can be put right.
type Fault struct {
	Line int // in the file, from 1; 0 when it concerns the file as a whole
	Text string
}

// Faults refuse a job file: everything found wrong, in the order of the lines.
type Faults struct {
	File string
	List []Fault
}

// Error gives one line a fault: file, line, what is wrong and the remedy.
func (f *Faults) Error() string {
	lines := make([]string, len(f.List))
	for i, fault := range f.List {
		if fault.Line > 0 {
			lines[i] = fmt.Sprintf("%s:%d: %s", f.File, fault.Line, fault.Text)
		} else {
			lines[i] = fmt.Sprintf("%s: %s", f.File, fault.Text)
		}
	}
	return strings.Join(lines, "\n")
}

func (f *Faults) add(line int, format string, args ...any) {
	f.List = append(f.List, Fault{Line: line, Text: fmt.Sprintf(format, args...)})
}

// orNil returns the faults as an error, or nil when there is none.
func (f *Faults) orNil() error {
	if len(f.List) == 0 {
		return nil
	}
	sort.SliceStable(f.List, func(i, j int) bool { return f.List[i].Line < f.List[j].Line })
	return f
}
