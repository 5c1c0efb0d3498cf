package main

import (
	"encoding/csv"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"runtime"
	"strconv"
	"strings"

	"ellwand/cmd/ellwand/build"
	"ellwand/cmd/ellwand/files"
)

// recordHeader names the columns of the file that --record keeps.
var recordHeader = []string{"instance", "seconds", "workers", "seed", "density_percent", "commit", "machine"}

// record adds a result to a CSV file, or puts it in the place of the one with
// the same instance, time, workers and seed, so that the file shows the newest
// figures and its history shows the older ones.
func record(path string, r reached, seconds float64) error {
	rows, err := readRecord(path)
	if err != nil {
		return err
	}
	row := []string{
		r.Name, strconv.FormatFloat(seconds, 'g', -1, 64), strconv.Itoa(r.Workers), strconv.FormatUint(r.Seed, 10),
		strconv.FormatFloat(r.Density, 'f', 2, 64), build.Commit(), machine(),
	}
	rows = replaceRow(rows, row)
	files := files.Set{Force: true}
	if err := files.Add(path, func(w io.Writer) error {
		return csv.NewWriter(w).WriteAll(append([][]string{recordHeader}, rows...))
	}); err != nil {
		return err
	}
	return files.Commit()
}

// readRecord returns the rows below the header; none when there is no file.
func readRecord(path string) ([][]string, error) {
	f, err := os.Open(path)
	if errors.Is(err, fs.ErrNotExist) {
		return nil, nil
	}
	if err != nil {
		return nil, fmt.Errorf("%s cannot be read; check its permissions", path)
	}
	defer f.Close()
	in := csv.NewReader(f)
	in.FieldsPerRecord = len(recordHeader)
	rows, err := in.ReadAll()
	if err != nil || len(rows) == 0 || strings.Join(rows[0], ",") != strings.Join(recordHeader, ",") {
		return nil, fmt.Errorf("%s is not a record of densities; give --record another file", path)
	}
	return rows[1:], nil
}

// replaceRow puts the row where its first four columns stand already, or at
// the end.
func replaceRow(rows [][]string, row []string) [][]string {
	for i, old := range rows {
		if strings.Join(old[:4], ",") == strings.Join(row[:4], ",") {
			rows[i] = row
			return rows
		}
	}
	return append(rows, row)
}

// machine names the processor and the cores.
func machine() string {
	model := runtime.GOARCH
	if text, err := os.ReadFile("/proc/cpuinfo"); err == nil {
		for line := range strings.Lines(string(text)) {
			if name, ok := strings.CutPrefix(line, "model name"); ok {
				model = strings.TrimSpace(strings.TrimLeft(name, "\t :"))
				break
			}
		}
	}
	return fmt.Sprintf("%s, %d cores", model, runtime.NumCPU())
}
